package icequill.einvoice;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Reads XML by paths of local names, knowing nothing of UBL or CII: {@code Price/PriceAmount}, {@code @unitCode}. */
record XmlReader(Node node) {

    static XmlReader of(byte[] xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return new XmlReader(factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml)).getDocumentElement());
    }

    List<XmlReader> all(String path) {
        try {
            XPath xpath = XPathFactory.newInstance().newXPath();
            NodeList found = (NodeList) xpath.evaluate(local(path), node, XPathConstants.NODESET);
            return IntStream.range(0, found.getLength()).mapToObj(i -> new XmlReader(found.item(i))).toList();
        } catch (XPathExpressionException badPath) {
            throw new IllegalArgumentException(path, badPath);
        }
    }

    /** The text there; empty when there is none. */
    String text(String path) {
        List<XmlReader> found = all(path);
        return found.isEmpty() ? "" : found.getFirst().node.getTextContent().strip();
    }

    List<String> texts(String path) {
        return all(path).stream().map(found -> found.node.getTextContent().strip()).toList();
    }

    /** The number there; the other when there is none. */
    BigDecimal number(String path, String otherwise) {
        String text = text(path);
        return new BigDecimal(text.isEmpty() ? otherwise : text);
    }

    private static String local(String path) {
        List<String> steps = new ArrayList<>();
        for (String step : path.split("/", -1)) {
            steps.add(step.isEmpty() || step.startsWith("@") ? step : "*[local-name()='" + step + "']");
        }
        return String.join("/", steps);
    }
}
