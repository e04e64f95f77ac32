package org.siltbench.labels.label;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.util.random.RandomGenerator;

/** What rain, pockets and cheap cameras do to a label. Sizes in dots of a 300 dpi picture. */
enum Weather {
  BLUR {
    @Override
    BufferedImage on(BufferedImage label, RandomGenerator random) {
      return blur(label, 1.2 + random.nextDouble() * 0.6);
    }
  },
  ROTATION {
    @Override
    BufferedImage on(BufferedImage label, RandomGenerator random) {
      return rotate(label, (random.nextBoolean() ? 15 : -15) + random.nextDouble() - 0.5);
    }
  },
  FOLD {
    @Override
    BufferedImage on(BufferedImage label, RandomGenerator random) {
      return fold(label, random);
    }
  },
  CONTRAST {
    @Override
    BufferedImage on(BufferedImage label, RandomGenerator random) {
      return fade(label, 0.20, random);
    }
  },
  DROPS {
    @Override
    BufferedImage on(BufferedImage label, RandomGenerator random) {
      return drops(label, random);
    }
  };

  /** The label after the weather. */
  abstract BufferedImage on(BufferedImage label, RandomGenerator random);

  private static BufferedImage copy(BufferedImage from) {
    BufferedImage to =
        new BufferedImage(from.getWidth(), from.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = to.createGraphics();
    g.drawImage(from, 0, 0, null);
    g.dispose();
    return to;
  }

  private static Graphics2D smooth(BufferedImage picture) {
    Graphics2D g = picture.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    return g;
  }

  /** A Gaussian blur of a standard deviation in dots. */
  private static BufferedImage blur(BufferedImage label, double sigma) {
    int reach = (int) Math.ceil(3 * sigma);
    int side = 2 * reach + 1;
    float[] weights = new float[side * side];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      int x = i % side - reach;
      int y = i / side - reach;
      weights[i] = (float) Math.exp(-(x * x + y * y) / (2 * sigma * sigma));
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= (float) sum;
    }
    BufferedImage padded = pad(label, reach + 2);
    return new ConvolveOp(new Kernel(side, side, weights), ConvolveOp.EDGE_NO_OP, null)
        .filter(padded, null);
  }

  private static BufferedImage pad(BufferedImage label, int by) {
    BufferedImage out =
        new BufferedImage(
            label.getWidth() + 2 * by, label.getHeight() + 2 * by, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = out.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, out.getWidth(), out.getHeight());
    g.drawImage(label, by, by, null);
    g.dispose();
    return out;
  }

  private static BufferedImage rotate(BufferedImage label, double degrees) {
    int side = (int) Math.hypot(label.getWidth(), label.getHeight()) + 20;
    BufferedImage out = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = smooth(out);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, side, side);
    AffineTransform turn =
        AffineTransform.getRotateInstance(Math.toRadians(degrees), side / 2.0, side / 2.0);
    turn.translate((side - label.getWidth()) / 2.0, (side - label.getHeight()) / 2.0);
    g.drawImage(label, turn, null);
    g.dispose();
    return out;
  }

  /** A crease of two dots where ink has worn to grey, right across the label, through the code. */
  private static BufferedImage fold(BufferedImage label, RandomGenerator random) {
    BufferedImage out = copy(label);
    Graphics2D g = smooth(out);
    int worn = 160 + random.nextInt(60);
    g.setColor(new Color(worn, worn, worn));
    g.setStroke(new BasicStroke(2));
    double at = 15 + random.nextDouble() * Math.min(label.getHeight() * 0.7, 110);
    double slope = (random.nextDouble() - 0.5) * 20;
    g.draw(new Line2D.Double(0, at, label.getWidth(), at + slope));
    g.dispose();
    return out;
  }

  /** Black grows lighter and white darker by a share of the range, with a little grain. */
  private static BufferedImage fade(BufferedImage label, double loss, RandomGenerator random) {
    BufferedImage out = copy(label);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        double level = out.getRaster().getSample(x, y, 0);
        double faded = 255 * loss / 2 + level * (1 - loss) + random.nextGaussian() * 4;
        out.getRaster().setSample(x, y, 0, (int) Math.max(0, Math.min(255, faded)));
      }
    }
    return out;
  }

  /** Drops: round spots of 0.15 to 0.45 mm where ink ran off (white) or dirt stayed (black). */
  private static BufferedImage drops(BufferedImage label, RandomGenerator random) {
    BufferedImage out = copy(label);
    Graphics2D g = smooth(out);
    double area = label.getWidth() * label.getHeight() / (300.0 * 300.0) * 645;
    int count = (int) Math.round(area * 0.05);
    for (int i = 0; i < count; i++) {
      g.setColor(random.nextBoolean() ? Color.WHITE : Color.BLACK);
      double d = 1.8 + random.nextDouble() * 3.5;
      g.fill(
          new Ellipse2D.Double(
              random.nextDouble() * label.getWidth(),
              random.nextDouble() * label.getHeight(),
              d,
              d));
    }
    g.dispose();
    return out;
  }
}
