package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Paper;
import icequill.files.paper.PaperJson;
import icequill.party.Language;
import icequill.party.PaperSize;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Papers are the same in a process with another locale and time zone. */
@Isolated("what belongs to the whole process is changed")
@Tag("wide")
class ElsewhereTest {

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @TempDir
    Path shop;

    @AfterEach
    void comeHome() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17})
    void pdf_printedAgainElsewhere_isTheSameBytes(int kind) {
        Paper paper = InvoiceFixture.of(Language.SPANISH, PaperSize.A4, "EUR", "ES").withLines(30).papers().get(kind);
        byte[] first = pdf(paper);

        goTo(Locale.GERMANY);
        Paper stored = PaperJson.read(PaperJson.write(paper), "stored.json").orElseThrow();

        assertThat(Arrays.mismatch(pdf(stored), first)).as("first differing byte").isEqualTo(-1);
    }

    /** Where digits are others. */
    @Test
    void html_otherLocaleAndTimeZone_isTheSame() {
        Paper invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").invoice();
        String here = Printer.of(shop).html(invoice).orElseThrow().text();

        goTo(Locale.of("ar", "EG"));

        assertThat(Printer.of(shop).html(invoice).orElseThrow().text()).isEqualTo(here);
    }

    private static void goTo(Locale other) {
        Locale.setDefault(other);
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
    }

    private byte[] pdf(Paper paper) {
        Printer printer = Printer.of(shop);
        return printer.html(paper).then(html -> printer.pdf(paper, html, List.of(), Map.of())).orElseThrow();
    }
}
