package icequill.einvoice;

import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.StringReader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.money.Monetary;
import javax.money.MonetaryAmount;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * What an electronic bill, credit note or quotation says in the places that programs book it by.
 *
 * @param number BT-1
 * @param date BT-2
 * @param total BT-112, in the currency of BT-5
 * @param payable BT-115
 */
public record StatedBill(String number, LocalDate date, MonetaryAmount total, MonetaryAmount payable) {

    private static final String SETTLEMENT = "SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement/";
    private static final String SUMS = SETTLEMENT + "SpecifiedTradeSettlementHeaderMonetarySummation/";
    private static final Map<String, Syntax> SYNTAXES = Map.of("Invoice", ubl("Document", "Legal"), "CreditNote",
            ubl("Document", "Legal"), "Quotation", ubl("Pricing", "Quoted"), "CrossIndustryInvoice",
            new Syntax("ExchangedDocument/ID", "ExchangedDocument/IssueDateTime/DateTimeString",
                    SETTLEMENT + "InvoiceCurrencyCode", SUMS + "GrandTotalAmount", SUMS + "DuePayableAmount"));

    /** Where a syntax says what, as names of elements below the first. */
    private record Syntax(String number, String date, String currency, String total, String payable) {}

    private static Syntax ubl(String currency, String sums) {
        return new Syntax("ID", "IssueDate", currency + "CurrencyCode", sums + "MonetaryTotal/TaxInclusiveAmount",
                sums + "MonetaryTotal/PayableAmount");
    }

    /** Reads XML, which may be anything; what is missing or said twice is a problem. */
    public static Validated<StatedBill> read(String xml) {
        try {
            return Validated.valid(stated(new Texts(xml)));
        } catch (XMLStreamException | RuntimeException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.NOWHERE,
                    "no electronic bill: " + unreadable.getMessage(), "one as it was issued"));
        }
    }

    private static StatedBill stated(Texts texts) {
        Syntax syntax = SYNTAXES.get(texts.first);
        if (syntax == null) {
            throw new IllegalArgumentException("it is a " + texts.first);
        }
        String currency = texts.only(syntax.currency());
        return new StatedBill(texts.only(syntax.number()), day(texts.only(syntax.date())),
                amount(texts, syntax.total(), currency), amount(texts, syntax.payable(), currency));
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text,
                text.contains("-") ? DateTimeFormatter.ISO_LOCAL_DATE : DateTimeFormatter.BASIC_ISO_DATE);
    }

    private static MonetaryAmount amount(Texts texts, String path, String currency) {
        String own = texts.currency(path, currency);
        if (!own.equals(currency)) {
            throw new IllegalArgumentException(path + " is in " + own + ", and the bill in " + currency);
        }
        return Amounts.of(new BigDecimal(texts.only(path)), Monetary.getCurrency(currency));
    }

    /** The texts of all elements, by the names that lead to them from the first. */
    private static final class Texts {

        private static final String CURRENCY = "currencyID";

        private final Map<String, List<String>> texts = new HashMap<>();
        private final Map<String, String> currencies = new HashMap<>();
        private String first = "";

        Texts(String xml) throws XMLStreamException {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(xml));
            Deque<String> path = new ArrayDeque<>();
            StringBuilder text = new StringBuilder();
            while (reader.hasNext()) {
                switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    begun(reader, path);
                    text.setLength(0);
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(reader.getText());
                case XMLStreamConstants.END_ELEMENT -> {
                    texts.computeIfAbsent(path.removeLast(), none -> new ArrayList<>()).add(text.toString().strip());
                    text.setLength(0);
                }
                default -> {
                    // Comments and the like say nothing.
                }
                }
            }
        }

        private void begun(XMLStreamReader reader, Deque<String> path) {
            if (path.isEmpty()) {
                first = reader.getLocalName();
                path.add("");
            } else {
                path.add((path.getLast().isEmpty() ? "" : path.getLast() + "/") + reader.getLocalName());
            }
            String currency = reader.getAttributeValue(null, CURRENCY);
            if (currency != null) {
                currencies.put(path.getLast(), currency);
            }
        }

        String only(String path) {
            List<String> all = texts.getOrDefault(path, List.of());
            if (all.size() != 1) {
                throw new IllegalArgumentException(path + " is said " + all.size() + " times");
            }
            return all.getFirst();
        }

        /** The currency of an amount, where it names one. */
        String currency(String path, String otherwise) {
            return currencies.getOrDefault(path, otherwise);
        }
    }
}
