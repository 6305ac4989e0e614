package icequill.render.pdf;

import icequill.document.Attachment;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The metadata packet of a file (XMP, ISO 16684-1). */
final class Metadata {

    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
              <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                    xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                    xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                  <dc:format>application/pdf</dc:format>
                  <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
                  <xmp:CreateDate>{date}</xmp:CreateDate>
                  <xmp:ModifyDate>{date}</xmp:ModifyDate>
                  <pdf:Producer>{producer}</pdf:Producer>
                  <pdfaid:part>3</pdfaid:part>
                  <pdfaid:conformance>A</pdfaid:conformance>
                  <pdfuaid:part>1</pdfuaid:part>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                    xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                    xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                  <pdfaExtension:schemas><rdf:Bag>
                    <rdf:li rdf:parseType="Resource">
                      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                      <pdfaSchema:property><rdf:Seq>
                        <rdf:li rdf:parseType="Resource">
                          <pdfaProperty:name>part</pdfaProperty:name>
                          <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                          <pdfaProperty:category>internal</pdfaProperty:category>
                          <pdfaProperty:description>part of ISO 14289 the file follows</pdfaProperty:description>
                        </rdf:li>
                      </rdf:Seq></pdfaSchema:property>
                    </rdf:li>{schemas}
                  </rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>{values}
              </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """;

    /** What Factur-X 1.0 asks of a file that carries an invoice as CII. */
    private static final Schema HYBRID = new Schema("Factur-X",
            "urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#", "fx",
            List.of(new Property("DocumentType", "the kind of document", "INVOICE"),
                    new Property("DocumentFileName", "the name of the file within", Attachment.HYBRID),
                    new Property("Version", "the version of the schema", "1.0"),
                    new Property("ConformanceLevel", "the profile of the data", "EN 16931")));

    private static final String DECLARED = """

            <rdf:li rdf:parseType="Resource">
              <pdfaSchema:schema>{schema}</pdfaSchema:schema>
              <pdfaSchema:namespaceURI>{uri}</pdfaSchema:namespaceURI>
              <pdfaSchema:prefix>{prefix}</pdfaSchema:prefix>
              <pdfaSchema:property><rdf:Seq>{properties}</rdf:Seq></pdfaSchema:property>
            </rdf:li>""";
    private static final String DECLARED_PROPERTY = """

            <rdf:li rdf:parseType="Resource">
              <pdfaProperty:name>{name}</pdfaProperty:name>
              <pdfaProperty:valueType>Text</pdfaProperty:valueType>
              <pdfaProperty:category>external</pdfaProperty:category>
              <pdfaProperty:description>{about}</pdfaProperty:description>
            </rdf:li>""";

    private Metadata() {
    }

    /** Properties that PDF/A does not know and that a file must therefore declare (ISO 19005-3, 6.6.2.3). */
    private record Schema(String name, String uri, String prefix, List<Property> properties) {

        String declared() {
            return DECLARED.replace("{schema}", name).replace("{uri}", uri).replace("{prefix}", prefix).replace(
                    "{properties}", properties.stream().map(Property::declared).collect(Collectors.joining()));
        }

        String values() {
            return "\n<rdf:Description rdf:about=\"\" xmlns:" + prefix + "=\"" + uri + "\">"
                    + properties.stream().map(property -> property.value(prefix)).collect(Collectors.joining())
                    + "\n</rdf:Description>";
        }
    }

    /** A property, what it is about, and its value here. */
    private record Property(String name, String about, String value) {

        String declared() {
            return DECLARED_PROPERTY.replace("{name}", name).replace("{about}", about);
        }

        String value(String prefix) {
            return "\n  <" + prefix + ":" + name + ">" + escaped(value) + "</" + prefix + ":" + name + ">";
        }
    }

    /**
     * The packet in UTF-8.
     *
     * @param date in the form of ISO 8601, the same as in the document's information
     * @param hybrid whether the file carries {@link Attachment#HYBRID}
     * @param marks what the shop's book says of the paper, by name; empty for one that is not of the book
     */
    static byte[] packet(String title, String producer, String date, boolean hybrid, Map<String, String> marks) {
        List<Schema> schemas = Stream.concat(hybrid ? Stream.of(HYBRID) : Stream.empty(),
                marks.isEmpty() ? Stream.empty() : Stream.of(chain(marks))).toList();
        return PACKET.replace("{schemas}", schemas.stream().map(Schema::declared).collect(Collectors.joining()))
                .replace("{values}", schemas.stream().map(Schema::values).collect(Collectors.joining()))
                .replace("{date}", date).replace("{producer}", escaped(producer)).replace("{title}", escaped(title))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** The prefix of what the shop's book says. */
    static final String BOOK = "book";

    private static Schema chain(Map<String, String> marks) {
        return new Schema("Chain of papers", PrintedFile.BOOK, BOOK, new TreeMap<>(marks).entrySet().stream()
                .map(mark -> new Property(mark.getKey(), "what the book says of this paper", mark.getValue()))
                .toList());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
