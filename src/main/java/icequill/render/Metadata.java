package icequill.render;

import icequill.document.Attachment;
import java.nio.charset.StandardCharsets;
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
                    </rdf:li>{hybridSchema}
                  </rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>{hybrid}
              </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """;

    /** What Factur-X 1.0 asks of a file that carries an invoice as CII. */
    private static final String HYBRID = """

            <rdf:Description rdf:about="" xmlns:fx="urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#">
              <fx:DocumentType>INVOICE</fx:DocumentType>
              <fx:DocumentFileName>factur-x.xml</fx:DocumentFileName>
              <fx:Version>1.0</fx:Version>
              <fx:ConformanceLevel>EN 16931</fx:ConformanceLevel>
            </rdf:Description>""";
    private static final String HYBRID_SCHEMA = """

            <rdf:li rdf:parseType="Resource">
              <pdfaSchema:schema>Factur-X</pdfaSchema:schema>
              <pdfaSchema:namespaceURI>urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#</pdfaSchema:namespaceURI>
              <pdfaSchema:prefix>fx</pdfaSchema:prefix>
              <pdfaSchema:property><rdf:Seq>{properties}</rdf:Seq></pdfaSchema:property>
            </rdf:li>""";
    private static final String PROPERTY = """

            <rdf:li rdf:parseType="Resource">
              <pdfaProperty:name>{name}</pdfaProperty:name>
              <pdfaProperty:valueType>Text</pdfaProperty:valueType>
              <pdfaProperty:category>external</pdfaProperty:category>
              <pdfaProperty:description>{about}</pdfaProperty:description>
            </rdf:li>""";

    private Metadata() {
    }

    /**
     * The packet in UTF-8.
     *
     * @param date in the form of ISO 8601, the same as in the document's information
     * @param hybrid whether the file carries {@link Attachment#HYBRID}
     */
    static byte[] packet(String title, String producer, String date, boolean hybrid) {
        return PACKET.replace("{hybridSchema}", hybrid ? HYBRID_SCHEMA.replace("{properties}", properties()) : "")
                .replace("{hybrid}", hybrid ? HYBRID : "").replace("{date}", date)
                .replace("{producer}", escaped(producer)).replace("{title}", escaped(title))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String properties() {
        return Stream.of("DocumentType the kind of document", "DocumentFileName the name of the file within",
                "Version the version of the schema", "ConformanceLevel the profile of the data")
                .map(line -> line.split(" ", 2)).map(pair -> PROPERTY.replace("{name}", pair[0])
                        .replace("{about}", pair[1]))
                .collect(Collectors.joining());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
