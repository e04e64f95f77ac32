package org.siltbench.station.work.correct;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Role;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.StatedTimes;
import org.siltbench.station.work.scan.BagScan;

/** What a field of an entry holds, and how a new value for it is read. */
enum FieldType {
  MASS {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      Mass.ofGrams(text);
      return Optional.of(text);
    }
  },
  DECIMAL {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return Optional.of(plain(text).toPlainString());
    }
  },
  VOLUME {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      double millilitres = Volume.ofMillilitres(text).millilitres();
      return millilitres > 0 && millilitres <= 10_000 ? Optional.of(text) : Optional.empty();
    }
  },
  PORTIONS {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      for (String part : text.split("\\+", -1)) {
        if (!Volume.ofMillilitres(part.strip()).isPositive()) {
          return Optional.empty();
        }
      }
      return Optional.of(text.replace(" ", ""));
    }
  },
  WHOLE {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return Optional.of(Long.valueOf(text));
    }
  },
  FLAG {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return switch (text) {
        case "true", "yes" -> Optional.of(true);
        case "false", "no" -> Optional.of(false);
        default -> Optional.empty();
      };
    }
  },
  TIME {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return StatedTimes.parse(text, clock)
          .filter(time -> !StatedTimes.inFuture(time, clock))
          .map(Object::toString);
    }
  },
  PLAN {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return StatedTimes.parse(text, clock).map(Object::toString);
    }
  },
  FILTER {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      String id = BagScan.of(text).filter().text();
      Filters.require(register, id);
      return Optional.of(id);
    }
  },
  ROLE {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      return Optional.of(Role.of(text).code());
    }
  },
  TEXT {
    @Override
    Optional<Object> read(String text, RegisterView register, Clock clock) {
      boolean fits = text.length() <= 2000 && text.chars().noneMatch(Character::isISOControl);
      return fits ? Optional.of(text) : Optional.empty();
    }
  };

  /** The value to be written; empty or an exception if the text is not one. */
  abstract Optional<Object> read(String text, RegisterView register, Clock clock);

  /** Reads a value for a field, or says what was expected. */
  final Object require(String field, String text, RegisterView register, Clock clock) {
    try {
      Optional<Object> value = read(text, register, clock);
      if (value.isPresent()) {
        return value.get();
      }
    } catch (IllegalArgumentException e) {
      throw wrong(field, text, e);
    }
    throw wrong(field, text, null);
  }

  private Words expected() {
    return Said.of(CorrectSays.valueOf("FIELD_" + name()));
  }

  private Problem.WrongUse wrong(
      String field, String text, @org.jspecify.annotations.Nullable Throwable cause) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    Problem.WrongUse problem =
        new Problem.WrongUse(CorrectSays.NOT_FITTING, shown, field, expected());
    if (cause != null) {
      problem.addSuppressed(cause);
    }
    return problem;
  }

  private static BigDecimal plain(String text) {
    if (text.length() > 30 || !text.matches("[+-]?\\d*\\.?\\d+")) {
      throw new NumberFormatException(text);
    }
    return new BigDecimal(text);
  }
}
