package org.siltbench.labels.draw;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.Imprint;

/** A document being drawn. The same calls give the same bytes. */
public final class Paper implements AutoCloseable {

  private final PDDocument document;
  private final Title title;
  private final Imprint imprint;
  private final Typeface regular;
  private final Typeface bold;
  private final @Nullable Structure structure;
  private final List<Page> open = new ArrayList<>();
  private boolean decorating;

  public Paper(Title title, Imprint imprint) throws IOException {
    this.document = new PDDocument(IOUtils.createMemoryOnlyStreamCache());
    this.title = title;
    this.imprint = imprint;
    this.regular = Typeface.load(document, "NotoSans-SemiCondensed.ttf");
    this.bold = Typeface.load(document, "NotoSans-SemiCondensedBold.ttf");
    this.structure = title.tagged() ? new Structure() : null;
  }

  public Imprint imprint() {
    return imprint;
  }

  /** A new page of the given size in millimetres, which stays open until it is finished. */
  public Page page(double width, double height) throws IOException {
    Page page = new Page(this, document, width, height);
    open.add(page);
    return page;
  }

  void forget(Page page) {
    open.remove(page);
  }

  Typeface face(boolean isBold) {
    return isBold ? bold : regular;
  }

  @Nullable Structure structure() {
    return structure;
  }

  /** Width of a text in millimetres. */
  public double width(String text, Type type) {
    Typeface face = face(type.bold());
    return face.ems(face.settable(text)) * type.size();
  }

  /** The text, or as much of it as fits a width, with an ellipsis. */
  public String shortened(String text, Type type, double room) {
    if (width(text, type) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end).strip() + "…", type) > room) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).strip() + "…";
  }

  /** Draws what belongs to the page, not to the text: running heads, repeated column heads. */
  public void decorate(Drawing drawing) throws IOException {
    boolean before = decorating;
    decorating = true;
    drawing.draw();
    decorating = before;
  }

  /** Something that draws. */
  @FunctionalInterface
  public interface Drawing {
    void draw() throws IOException;
  }

  boolean isDecorating() {
    return decorating;
  }

  /** Begins a part of the document's structure, for example "P", "H1", "Table". */
  public void begin(String type) {
    if (structure != null) {
      structure.begin(type);
    }
  }

  /** Says in words what the open part shows. */
  public void describe(String alternate) {
    if (structure != null) {
      structure.describe(alternate);
    }
  }

  /** Ends the part begun last. */
  public void end() {
    if (structure != null) {
      structure.end();
    }
  }

  /** Finishes every page and writes the document. */
  public void save(OutputStream out) throws IOException {
    for (Page page : List.copyOf(open)) {
      page.finish();
    }
    describeDocument();
    BufferedOutputStream buffered = new BufferedOutputStream(out, 1 << 16);
    document.save(buffered, CompressParameters.NO_COMPRESSION);
    buffered.flush();
  }

  private void describeDocument() throws IOException {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    document.setVersion(1.7f);
    document.setDocumentId(identity());
    document.setDocumentInformation(information());
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(Xmp.packet(title, imprint.printed()));
    catalog.setMetadata(metadata);
    catalog.setLanguage("en");
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    if (title.archival()) {
      catalog.addOutputIntent(intent());
    }
    if (structure != null) {
      structure.attach(document);
    }
  }

  private PDOutputIntent intent() throws IOException {
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(Srgb.profile()));
    intent.setInfo("sRGB IEC61966-2.1");
    intent.setOutputCondition("sRGB IEC61966-2.1");
    intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    intent.setRegistryName("http://www.color.org");
    return intent;
  }

  private PDDocumentInformation information() {
    PDDocumentInformation facts = new PDDocumentInformation();
    facts.setTitle(title.title());
    facts.setSubject(title.subject());
    facts.setProducer(Xmp.PRODUCER);
    facts.setCreationDate(calendar(imprint.printed()));
    facts.setModificationDate(calendar(imprint.printed()));
    return facts;
  }

  private static Calendar calendar(OffsetDateTime at) {
    return GregorianCalendar.from(at.withNano(0).toZonedDateTime());
  }

  private long identity() {
    CRC32 sum = new CRC32();
    String facts =
        title.title() + '\n' + title.subject() + '\n' + imprint.bench() + '\n' + imprint.head();
    sum.update(facts.getBytes(StandardCharsets.UTF_8));
    return imprint.printed().toEpochSecond() << 32 ^ sum.getValue();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
