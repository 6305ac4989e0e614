package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import icequill.party.Language;
import icequill.party.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of the shop's own in a language that only a file of words beside the tests knows. */
class FurtherLanguageTest {

    @TempDir
    private Path folder;

    @Test
    void shopsNames_inGermanToo_arePrintedAndKeptInThePapersData() throws IOException {
        Path shop = DemoShop.in(folder.resolve("shop"));
        change(shop.resolve("shop.yaml"), "language: en", "language: de");
        change(shop.resolve("pricing/labor.yaml"), "{en: lead technician, es: técnico principal}",
                "{en: lead technician, es: técnico principal, de: Obermonteur}");

        Run run = Run.of("invoice", "draft", shop.resolve("visits/late-call.yaml").toString(), "--html", "--json");

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        String page = written(shop, ".html");
        assertThat(page).contains("Obermonteur").doesNotContain("lead technician");
        BookShop book = new BookShop(shop);
        book.issue("late-call", "2026-05-14");
        assertThat(book.json("audit").path("findings")).isEmpty();
    }

    @Test
    void wording_inItsLanguages_elseEnglish() {
        Wording lead = new Wording("lead", "principal", Optional.of(Map.of("de", "Obermonteur")));

        assertThat(Stream.of("en", "es", "de", "fr").map(tag -> lead.in(new Language(tag))))
                .containsExactly("lead", "principal", "Obermonteur", "lead");
        assertThat(lead.and(Wording.same("x")).in(new Language("de"))).isEqualTo("Obermonteur: x");
        assertThat(Wording.same("x").and(lead).in(new Language("de"))).isEqualTo("x: Obermonteur");
    }

    @Test
    void nameWithATagThatIsNone_isAProblem() throws IOException {
        Path shop = DemoShop.in(folder.resolve("shop"));
        change(shop.resolve("pricing/labor.yaml"), "es: técnico principal}",
                "es: técnico principal, deu: Obermonteur}");

        Run run = Run.of("check", "--shop", shop.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.out() + run.err()).contains("pricing/labor.yaml", "deu");
    }

    private static String written(Path shop, String end) throws IOException {
        try (Stream<Path> files = Files.walk(shop.resolve("papers"))) {
            Path file = files.filter(path -> path.toString().endsWith(end)).findFirst().orElseThrow();
            return Files.readString(file);
        }
    }

    private static void change(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }
}
