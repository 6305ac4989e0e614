package icequill.einvoice;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Bill;
import icequill.document.Invoice;
import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.party.SalesTaxEncoding;
import icequill.render.words.Sentences;
import java.io.InputStream;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The official rules find nothing wrong with any kind of bill, in either syntax. */
class OfficialRulesTest {

    static final Function<Phrase, String> WORDING = Sentences.of(Language.ENGLISH, "US")::say;

    static byte[] ubl(Bill bill) {
        return EInvoice.ubl(bill, SalesTaxEncoding.EN16931, WORDING).orElseThrow();
    }

    static byte[] cii(Bill bill) {
        return EInvoice.cii(bill, WORDING).orElseThrow();
    }

    static Stream<Arguments> bills() {
        return Bills.all().entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void ubl_everyKindOfBill_isValid(String name, Bill bill) {
        SchematronRules judge = bill instanceof Invoice ? SchematronRules.UBL_INVOICE : SchematronRules.UBL_CREDIT_NOTE;

        assertThat(judge.faults(ubl(bill))).as(name).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void cii_everyKindOfBill_isValid(String name, Bill bill) {
        assertThat(SchematronRules.CII.faults(cii(bill))).as(name).isEmpty();
    }

    /** The judge itself works: what CEN publishes as good is good. */
    @ParameterizedTest
    @ValueSource(strings = {"ubl-tc434-example1", "ubl-tc434-example2", "ubl-tc434-example5", "ubl-tc434-example7",
            "ubl-tc434-example9"})
    void officialExample_ubl_isValid(String name) throws Exception {
        assertThat(SchematronRules.UBL_INVOICE.faults(example("ubl/" + name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ubl-tc434-creditnote1"})
    void officialExample_creditNote_isValid(String name) throws Exception {
        assertThat(SchematronRules.UBL_CREDIT_NOTE.faults(example("ubl/" + name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"CII_example1", "CII_example2", "CII_example5", "CII_example7", "CII_example9"})
    void officialExample_cii_isValid(String name) throws Exception {
        assertThat(SchematronRules.CII.faults(example("cii/" + name))).isEmpty();
    }

    private static byte[] example(String name) throws Exception {
        String file = "/external/test-files/1.3.16/" + name + ".xml";
        try (InputStream in = Objects.requireNonNull(OfficialRulesTest.class.getResourceAsStream(file), file)) {
            return in.readAllBytes();
        }
    }
}
