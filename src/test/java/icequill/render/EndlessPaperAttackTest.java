package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Checked;
import icequill.problem.Problem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Templates, style sheets and pictures that would print for ever, or take all memory. */
@Timeout(120)
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
        write("invoice.ftlh", "<html><head><title>x</title></head><body style=\"font-family: '" + Fonts.FAMILY + "'\">"
                + ("<p style=\"" + style + "\">x y</p>").repeat(40) + "</body></html>");

        Checked<byte[]> printed = printed();

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

        Checked<String> given = room.print(() -> {
            while (!Thread.currentThread().isInterrupted()) {
                Thread.onSpinWait();
            }
            Thread.interrupted();
            double sum = 0;
            for (long i = 0; sum >= 0 && i < Long.MAX_VALUE; i++) {
                sum += Math.sqrt((double) i);
            }
            return Checked.sound("never");
        });

        assertThat(given.problems()).extracting(Problem::message)
                .containsExactly("printing the paper takes more than 0 seconds of a processor's work");
        assertThat(room.print(() -> Checked.sound("next")).orElseThrow()).isEqualTo("next");
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

    /** A file of 900 KB that unpacks to 2.7 GB. */
    @Test
    void logoOfThirtyThousandPixelsEachWay_isNotUnpacked() throws IOException {
        Files.write(shop.resolve("logo.png"), png(30_000));

        assertThatThrownBy(() -> Picture.of(shop.resolve("logo.png"))).isInstanceOf(IOException.class)
                .hasMessage("it has 900000000 pixels, and may have 25000000");
        Files.write(shop.resolve("small.png"), png(40));
        assertThat(Picture.of(shop.resolve("small.png")).image().getWidth()).isEqualTo(40);
    }

    @Test
    void logoThatIsAPipe_isNotWaitedFor() throws Exception {
        assertThat(new ProcessBuilder("mkfifo", shop.resolve("logo.png").toString()).start().waitFor()).isZero();

        assertThatThrownBy(() -> Picture.of(shop.resolve("logo.png"))).hasMessage("no ordinary file");
    }

    private void assertPrintsAgain() throws IOException {
        Files.delete(shop.resolve("templates/invoice.ftlh"));
        assertThat(printed().problems()).isEmpty();
    }

    private Checked<byte[]> printed() {
        Printer printer = Printer.of(shop, new PrintRoom(1_000_000, Duration.ofSeconds(20)));
        return printer.html(INVOICE).then(page -> printer.pdf(INVOICE, page, List.of()));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(Files.createDirectories(shop.resolve("templates")).resolve(name), text);
    }

    /** A gray picture by the PNG specification (W3C, second edition, 5 and 11): one bit for each pixel, all zero. */
    private static byte[] png(int size) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(new byte[]{(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        chunk(file, "IHDR", ByteBuffer.allocate(13).putInt(size).putInt(size).put(new byte[]{1, 0, 0, 0, 0}).array());
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream rows = new DeflaterOutputStream(packed)) {
            byte[] row = new byte[1 + (size + 7) / 8];
            for (int i = 0; i < size; i++) {
                rows.write(row);
            }
        }
        chunk(file, "IDAT", packed.toByteArray());
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String name, byte[] data) throws IOException {
        byte[] kind = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(kind);
        sum.update(data);
        file.write(ByteBuffer.allocate(4).putInt(data.length).array());
        file.write(kind);
        file.write(data);
        file.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }
}
