package icequill.render;

import java.nio.charset.StandardCharsets;

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
                    </rdf:li>
                  </rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>
              </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """;

    private Metadata() {
    }

    /** @param date in the form of ISO 8601, the same as in the document's information */
    static byte[] packet(String title, String producer, String date) {
        return PACKET.replace("{title}", escaped(title)).replace("{producer}", escaped(producer))
                .replace("{date}", date)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
