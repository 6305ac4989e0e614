package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an invoice with VAT says on paper (VAT Directive 2006/112/EC, Art. 226). */
class VatPapersTest {

    private static final String SITE = "sites/pennon-wharf-taproom.yaml";
    private static final Path VISIT = Path.of("visits/late-call.yaml");

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() throws IOException {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
        change("shop.yaml", "paymentDays: 30", "paymentDays: 30\nvatId: DE123456789");
        change(SITE, "taxPlace: alder-county", "taxPlace: hafenland");
    }

    /** 276.58 x 19 % = 52.5502. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en | VAT number DE123456789 | Vat 19% on 276.58 52.55",
            "es | NIF-IVA DE123456789 | Iva 19 % sobre 276.58 52.55"})
    void paper_namesTheSellersNumberAndTheTax(String language, String number, String tax) throws IOException {
        String text = invoice(language);

        assertThat(text).contains(number).containsIgnoringCase(tax).doesNotContain("VAT tax", "VAT, 19");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "en | AE | Reverse charge: you owe the tax on 276.58 0.00",
            "es | AE | Inversión del sujeto pasivo: usted debe el impuesto sobre 276.58 0.00",
            "en | K | Exempt supply to a business in another EU state on 276.58 0.00",
            "en | G | Exempt export out of the EU on 276.58 0.00", "en | Z | Zero-rated on 276.58 0.00",
            "en | E | Exempt from the tax on 276.58 0.00", "es | O | No sujeto al impuesto sobre 276.58 0.00"})
    void nothingCharged_saysWhyInWords_neverTheNameOfTheRate(String language, String category, String why)
            throws IOException {
        untaxed(category);
        customersNumber();

        assertThat(invoice(language)).contains(why).doesNotContain("inner-rate", "Inner-rate");
    }

    @Test
    void customerOwesTheTax_hisNumberIsPrinted_orAskedFor() throws IOException {
        untaxed("AE");

        List<Problem> missing = DemoShop.office(folder)
                .invoice(FormName.file(folder.resolve(VISIT)), options("en", "2026-0114")).problems();
        customersNumber();

        assertThat(missing).extracting(Problem::message)
                .containsExactly("Pennon Wharf Brewing LLC owes the tax, so the "
                        + "invoice needs the customer's VAT identifier");
        assertThat(invoice("en")).contains("VAT number FR12345678901");
    }

    @Test
    void salesTax_namesNoVatNumber() throws IOException {
        change(SITE, "taxPlace: hafenland", "taxPlace: alder-county");

        assertThat(invoice("en")).doesNotContain("VAT");
    }

    private void untaxed(String category) throws IOException {
        change("pricing/taxes.yaml", """
                      - id: standard
                        category: S
                        components:
                          - {name: {en: VAT, es: IVA}, percent: 19, levy: nation}
                """, "      - id: inner-rate\n        category: " + category + "\n");
        change("pricing/taxes.yaml", "{taxability: taxable, rate: standard}",
                "{taxability: exempt, rate: inner-rate}");
    }

    private void customersNumber() throws IOException {
        change(SITE, "    - name: Pennon Wharf Brewing LLC\n",
                "    - name: Pennon Wharf Brewing LLC\n      vatId: FR12345678901\n");
    }

    private String invoice(String language) throws IOException {
        WrittenPaper paper = DemoShop.office(folder)
                .invoice(FormName.file(folder.resolve(VISIT)), options(language, "2026-0114"))
                .orElseThrow();
        return PrintedQuote.of(paper.files().getFirst()).flowing();
    }

    private static PaperOptions options(String language, String number) {
        return new PaperOptions(Optional.of(number), LocalDate.of(2026, 5, 14), Language.ofTag(language), Extras.NONE);
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }
}
