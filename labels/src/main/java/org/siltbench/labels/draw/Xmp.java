package org.siltbench.labels.draw;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/** The metadata packet of a document, the same facts as its information dictionary. */
final class Xmp {

  static final String PRODUCER = "Siltbench";

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");

  private Xmp() {}

  static byte[] packet(Title title, OffsetDateTime made) {
    String time = TIME.format(made);
    String archival =
        title.archival()
            ? "<pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>\n"
            : "";
    String text =
        """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
         xmlns:dc="http://purl.org/dc/elements/1.1/"
         xmlns:xmp="http://ns.adobe.com/xap/1.0/"
         xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
         xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
        <xmp:CreateDate>%s</xmp:CreateDate>
        <xmp:ModifyDate>%s</xmp:ModifyDate>
        <pdf:Producer>%s</pdf:Producer>
        %s</rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
            .formatted(
                escape(title.title()), escape(title.subject()), time, time, PRODUCER, archival);
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String escape(String text) {
    return text.replaceAll("\\p{Cntrl}", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }
}
