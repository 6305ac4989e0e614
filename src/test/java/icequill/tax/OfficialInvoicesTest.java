package icequill.tax;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.tax.TaxRate.Category;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * The official example invoices of EN 16931 (CEN/TC 434 validation artefacts, release 1.3.16), worked out again with our own
 * rounding and tax: every regular line's net, the sums, the tax of each category and rate, the total and what is payable.
 */
class OfficialInvoicesTest {

    /** Lines whose printed net is not quantity times price (the rules check no line arithmetic); their net is taken as printed. */
    private static final Set<String> IRREGULAR = Set.of("ubl-tc434-example1 20", "ubl-tc434-example2 1",
            "ubl-tc434-example3 1", "ubl-tc434-example3 2", "ubl-tc434-example10 20", "guide-example1 20",
            "guide-example2 1", "guide-example3 1", "guide-example3 2");

    @ParameterizedTest
    @ValueSource(strings = {"ubl-tc434-example1", "ubl-tc434-example2", "ubl-tc434-example3", "ubl-tc434-example4",
            "ubl-tc434-example5", "ubl-tc434-example6", "ubl-tc434-example7", "ubl-tc434-example8",
            "ubl-tc434-example9",
            "ubl-tc434-example10", "guide-example1", "guide-example2", "guide-example3", "ubl-tc434-creditnote1"})
    void totals_officialExample_asPrinted(String name) throws Exception {
        Element invoice = read(name);
        CurrencyUnit currency = Currencies.find(text(invoice, "DocumentCurrencyCode")).orElseThrow();
        List<Taxable> taxables = new ArrayList<>();
        List<MonetaryAmount> lineNets = new ArrayList<>();
        for (Element line : children(invoice, name.contains("creditnote") ? "CreditNoteLine" : "InvoiceLine")) {
            MonetaryAmount net = Amounts.of(number(line, "LineExtensionAmount"), currency);
            boolean regular = lineNet(line, currency).isEqualTo(net);
            assertThat(regular).as("line " + text(line, "ID"))
                    .isNotEqualTo(IRREGULAR.contains(name + " " + text(line, "ID")));
            lineNets.add(net);
            taxables.add(new Taxable(rate(child(child(line, "Item"), "ClassifiedTaxCategory")), net));
        }
        MonetaryAmount lines = Amounts.sum(lineNets, currency);
        MonetaryAmount net = lines;
        for (Element change : children(invoice, "AllowanceCharge")) {
            MonetaryAmount amount = signed(change, currency);
            net = net.add(amount);
            taxables.add(new Taxable(rate(child(change, "TaxCategory")), amount));
        }

        List<TaxTotal> totals = TaxTotals.of(taxables, TaxBasis.INVOICE, currency);

        Element sums = child(invoice, "LegalMonetaryTotal");
        MonetaryAmount tax = Amounts.sum(totals.stream().map(TaxTotal::tax).toList(), currency);
        assertSame(lines, number(sums, "LineExtensionAmount"));
        assertSame(net, number(sums, "TaxExclusiveAmount"));
        assertThat(printed(totals)).isEqualTo(printed(invoice));
        assertSame(tax, number(taxTotal(invoice, currency), "TaxAmount"));
        assertSame(net.add(tax), number(sums, "TaxInclusiveAmount"));
        assertSame(net.add(tax).subtract(optional(sums, "PrepaidAmount", currency))
                .add(optional(sums, "PayableRoundingAmount", currency)), number(sums, "PayableAmount"));
    }

    /** Quantity times price by its base quantity, rounded once, less allowances and plus charges of the line. */
    private static MonetaryAmount lineNet(Element line, CurrencyUnit currency) {
        Element price = child(line, "Price");
        String quantityName = line.getLocalName().equals("CreditNoteLine") ? "CreditedQuantity" : "InvoicedQuantity";
        Figure figure = Figure.term(number(line, quantityName), "")
                .times(Figure.term(number(price, "PriceAmount"), ""));
        List<Element> base = children(price, "BaseQuantity");
        if (!base.isEmpty()) {
            figure = figure.over(Figure.term(new BigDecimal(base.getFirst().getTextContent().strip()), ""));
        }
        MonetaryAmount net = Explanation.of(figure.rounded(Rounding.LINE, currency)).amount(currency);
        for (Element change : children(line, "AllowanceCharge")) {
            net = net.add(signed(change, currency));
        }
        return net;
    }

    private static MonetaryAmount signed(Element change, CurrencyUnit currency) {
        MonetaryAmount amount = Amounts.of(number(change, "Amount"), currency);
        return text(change, "ChargeIndicator").equals("true") ? amount : amount.negate();
    }

    private static TaxRate rate(Element category) {
        Category code = Category.valueOf(text(category, "ID"));
        return code.isTaxed()
                ? new TaxRate("VAT", code,
                        List.of(new TaxRate.Component(Wording.same("VAT"), new Percent(number(category, "Percent")),
                                TaxRate.Levy.NATION, Optional.empty(), Optional.empty())),
                        Optional.empty())
                : new TaxRate("VAT", code, List.of(), Optional.of(Wording.same("as printed")));
    }

    private static Map<String, String> printed(List<TaxTotal> totals) {
        Map<String, String> printed = new TreeMap<>();
        totals.forEach(
                total -> printed.put(total.rate().category() + " " + total.rate().total().value().toPlainString(),
                        Amounts.plain(total.base()) + " " + Amounts.plain(total.tax())));
        return printed;
    }

    private static Map<String, String> printed(Element invoice) {
        CurrencyUnit currency = Currencies.find(text(invoice, "DocumentCurrencyCode")).orElseThrow();
        Map<String, String> printed = new TreeMap<>();
        for (Element subtotal : children(taxTotal(invoice, currency), "TaxSubtotal")) {
            TaxRate rate = rate(child(subtotal, "TaxCategory"));
            printed.put(rate.category() + " " + rate.total().value().toPlainString(),
                    Amounts.plain(Amounts.of(number(subtotal, "TaxableAmount"), currency)) + " "
                            + Amounts.plain(Amounts.of(number(subtotal, "TaxAmount"), currency)));
        }
        return printed;
    }

    /** An invoice may state its tax in a second currency too. */
    private static Element taxTotal(Element invoice, CurrencyUnit currency) {
        return children(invoice, "TaxTotal").stream().filter(
                total -> child(total, "TaxAmount").getAttribute("currencyID").equals(currency.getCurrencyCode()))
                .findFirst().orElseThrow();
    }

    private static void assertSame(MonetaryAmount amount, BigDecimal printed) {
        assertThat(Amounts.number(amount)).isEqualByComparingTo(printed);
    }

    private static MonetaryAmount optional(Element parent, String name, CurrencyUnit currency) {
        return children(parent, name).isEmpty()
                ? Amounts.zero(currency)
                : Amounts.of(number(parent, name), currency);
    }

    private static BigDecimal number(Element parent, String name) {
        return new BigDecimal(text(parent, name));
    }

    private static String text(Element parent, String name) {
        return child(parent, name).getTextContent().strip();
    }

    private static Element child(Element parent, String name) {
        return children(parent, name).getFirst();
    }

    private static List<Element> children(Element parent, String name) {
        NodeList nodes = parent.getChildNodes();
        return IntStream.range(0, nodes.getLength()).mapToObj(nodes::item)
                .filter(node -> node.getNodeType() == Node.ELEMENT_NODE && name.equals(node.getLocalName()))
                .map(Element.class::cast).toList();
    }

    private static Element read(String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        try (InputStream file = OfficialInvoicesTest.class
                .getResourceAsStream("/external/test-files/1.3.16/ubl/" + name + ".xml")) {
            return factory.newDocumentBuilder().parse(Objects.requireNonNull(file, name)).getDocumentElement();
        }
    }
}
