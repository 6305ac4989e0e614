package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.limits.PrintRoom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Templates, style sheets and pictures that would print for ever, or take all memory. */
@Timeout(120)
@Tag("wide")
class EndlessPaperAttackTest {

    private static final Invoice INVOICE = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US")
            .invoice();

    @TempDir
    Path shop;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<#list 1.. as i></#list> | takes more steps than it may",
            "<#list 1.. as i>x</#list> | takes more steps than it may",
            "<#list 1.. as i>${'x'?left_pad(9999)}</#list> | writes more than 5000000 characters",
            "<#macro m><@m/></#macro><@m/> | it takes more depth than there is",
            "<#function f><#return f()></#function>${f()} | it takes more depth than there is",
            "<#list 1..3000 as i><#list 1..3000 as j></#list></#list> | takes more steps than it may",
            "${'x'?left_pad(6000000)} | writes more than 5000000 characters",
            "<#include 'invoice.ftlh'> | it takes more depth than there is",
            "<#assign s='xxxxxxxx'><#list 1..60 as i><#assign s=s+s></#list> | more memory than there is"})
    void template_endsWithASentenceThatSaysWhichLimit(String template, String limit) throws IOException {
        write("invoice.ftlh", template);

        assertThat(printed().problems()).extracting(Problem::message).singleElement().asString().contains(limit);
        assertPrintsAgain();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<td rowspan='100000000'>x</td> | rowspan=\"100000000\"",
            "<td colspan='2000000000'>x</td> | colspan=\"2000000000\"", "<td rowspan='-1'>x</td> | rowspan=\"-1\""})
    void hugeCell_isRefused(String cell, String limit) throws IOException {
        write("invoice.ftlh",
                "<html><head><title>x</title></head><body><table><tr>" + cell + "</tr></table></body></html>");

        assertThat(printed().problems()).extracting(Problem::message).singleElement().asString().contains(limit);
    }

    /** Whatever the page comes to, it comes to an end. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"font-size: 100000pt", "padding: 900000in", "line-height: 100000000",
            "margin-top: 99999999mm", "width: 1e30px", "letter-spacing: 100000in", "page-break-before: always"})
    void hugeStyle_printsOrSaysALimit(String style) throws IOException {
        write("invoice.ftlh",
                "<html><head><title>x</title></head><body style=\"font-family: '" + "Liberation Sans" + "'\">"
                        + ("<p style=\"" + style + "\">x y</p>").repeat(40) + "</body></html>");

        Validated<byte[]> printed = printed();

        printed.problems().forEach(problem -> assertThat(problem.message()).containsAnyOf("pages, and may have 2000",
                "seconds of a processor's work", "more memory than there is"));
        assertPrintsAgain();
    }

    @Test
    void pageWithoutTitleOrBody_isAProblemAndNoFault() throws IOException {
        write("invoice.ftlh", "<html><p>x</p></html>");

        assertThat(printed().problems()).extracting(Problem::message)
                .containsExactly("the page lacks title and body");
    }

    @Test
    void fontThatIsNotOurs_isAProblemAndNoFault() throws IOException {
        write("invoice.ftlh", "<html><head><title>x</title></head><body style=\"font-family: serif\">x</body></html>");

        assertThat(printed().problems()).extracting(Problem::message).singleElement().asString()
                .contains("cannot be kept in archives");
    }

    @Test
    void layoutWithoutEnd_isGivenUpByItsWork() {
        PrintRoom room = new PrintRoom(1_000, Duration.ofMillis(200));
        // Nobody stops a thread from outside: without this it would take one of two processors from all later tests.
        AtomicBoolean seen = new AtomicBoolean();

        Validated<String> given = room.print(() -> {
            while (!Thread.currentThread().isInterrupted()) {
                Thread.onSpinWait();
            }
            Thread.interrupted();
            double sum = 0;
            for (long i = 0; sum >= 0 && !seen.get(); i++) {
                sum += Math.sqrt((double) i);
            }
            return Validated.valid("never");
        });
        seen.set(true);

        assertThat(given.problems()).extracting(Problem::message)
                .containsExactly("printing the paper takes more than 0 seconds of a processor's work");
        assertThat(room.print(() -> Validated.valid("next")).orElseThrow()).isEqualTo("next");
    }

    @Test
    void faultOfTheProgram_staysOne() {
        assertThatThrownBy(() -> PrintRoom.USUAL.print(() -> {
            throw new IllegalStateException("a fault");
        })).isInstanceOf(IllegalStateException.class).hasMessage("a fault");
        assertThatThrownBy(() -> PrintRoom.USUAL.print(() -> {
            throw new AssertionError("an error");
        })).isInstanceOf(AssertionError.class).hasMessage("an error");
    }

    private void assertPrintsAgain() throws IOException {
        Files.delete(shop.resolve("templates/invoice.ftlh"));
        assertThat(printed().problems()).isEmpty();
    }

    private Validated<byte[]> printed() {
        Printer printer = Printer.of(shop, new PrintRoom(1_000_000, Duration.ofSeconds(20)));
        return printer.html(INVOICE).then(page -> printer.pdf(INVOICE, page, List.of(), Map.of()));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(Files.createDirectories(shop.resolve("templates")).resolve(name), text);
    }
}
