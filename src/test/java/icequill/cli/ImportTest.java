package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.OwnProcess;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Forms taken into the book and given back. */
@Tag("wide")
class ImportTest {

    @TempDir
    Path folder;

    /** Every kind of form: what is given back says the same when it is taken in again, and in another database. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void everyForm_takenInAndGivenBack_isTheSame(Database database) throws IOException {
        BookShop shop = BookShop.empty(folder.resolve("shop"), database);
        assertThat(states(shop.json(importing(DemoShop.forms(shop.folder()))))).hasSizeGreaterThan(30)
                .allMatch(state -> state.endsWith(" new"));
        Path first = folder.resolve("first.yaml");
        shop.json("export", first.toString());

        assertThat(states(shop.json("import", first.toString()))).hasSizeGreaterThan(30)
                .allMatch(state -> state.endsWith(" same"));

        BookShop other = BookShop.empty(folder.resolve("other"), Database.SQLITE);
        other.json("import", first.toString());
        other.json("export", folder.resolve("second.yaml").toString());
        assertThat(folder.resolve("second.yaml")).hasSameTextualContentAs(first);
        assertThat(other.json("price", "late-call").path("net").asString()).isEqualTo("276.58");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void siteByFormAndByCommands_isTheSame() throws IOException {
        BookShop form = BookShop.empty(folder.resolve("form"), Database.SQLITE);
        form.json("import",
                form.write("mill.yaml",
                        """
                                form: customer
                                format: 1
                                id: mill
                                name: Mill
                                billTo: [{name: Mill, address: {street: [4 Mill Lane], city: Alderton, region: NY, postalCode: "10999", country: US}}]
                                ---
                                form: site
                                format: 1
                                id: lane
                                customer: mill
                                name: Lane
                                address: {street: [4 Mill Lane], city: Alderton, region: NY, postalCode: "10999", country: US}
                                kind: bakery
                                miles: 3
                                taxPlace: alder-county
                                """)
                        .toString());
        BookShop flags = BookShop.empty(folder.resolve("flags"), Database.SQLITE);
        String[] lane = {"--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY", "--postal-code", "10999",
                "--country", "US"};
        flags.json(with(lane, "customer", "add", "mill", "--name", "Mill"));
        flags.json(with(lane, "site", "add", "lane", "--customer", "mill", "--name", "Lane", "--kind", "bakery",
                "--miles", "3", "--tax-place", "alder-county"));

        assertThat(flags.json("customer", "show", "mill")).isEqualTo(form.json("customer", "show", "mill"));
        assertThat(flags.json("site", "show", "lane")).isEqualTo(form.json("site", "show", "lane"));
    }

    @Test
    void whatWasBilled_isNotChanged_andNothingElseIsStoredWithIt() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        Path call = shop.folder().resolve("visits/late-call.yaml");
        Path brushing = shop.folder().resolve("visits/ten-minute-brushing.yaml");
        shop.issue("late-call", "2026-05-14");
        Files.writeString(call, Files.readString(call).replace("18:05", "18:20"));

        assertThat(shop.problems("import", call.toString(), brushing.toString()).getFirst())
                .contains("was billed as INV-2026-00001");
        assertThat(shop.run("price", "ten-minute-brushing").status()).isEqualTo(3);
        shop.json("import", brushing.toString());
        assertThat(states(shop.json("import", brushing.toString(), "--dry-run")))
                .containsExactly("visit ten-minute-brushing same");
    }

    /** The same visit, first planned and then done; one that was done is not planned again. */
    @Test
    void plannedVisit_isDoneUnderItsName() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        String planned = Files.readString(shop.folder().resolve("planned/survey-bakery.yaml"));
        Path done = shop.write("survey-bakery.yaml", planned.replace("form: planned-visit", "form: visit"));

        assertThat(shop.run("invoice", "issue", "survey-bakery").err()).contains("is only planned");
        assertThat(states(shop.json("import", done.toString()))).containsExactly("visit survey-bakery changed");
        assertThat(shop.problems("import", shop.write("survey-bakery.yaml", planned).toString()).getFirst())
                .contains("was done already");
        assertThat(shop.json("invoice", "issue", "survey-bakery", "--date", "2026-05-14").path("papers").get(0)
                .path("number")
                .asString()).isEqualTo("INV-2026-00001");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"format: 1 | does not say what it tells of | brushing-request",
            "form: vist | there is no form \"vist\" | did you mean \"visit\"?",
            "form: credit | there is no form \"credit\" | agreement",
            "{form: visit, id: ../../x} | the id \"../../x\" | up to 60 small letters",
            "{form: visit, format: 1, site: nowhere, people: []} | nothing is listed here | at least 1"})
    void wrongForm_saysWhereAndWhatIsAllowed(String text, String message, String allowed) throws IOException {
        BookShop shop = BookShop.empty(folder.resolve("shop"), Database.SQLITE);

        assertThat(shop.problems("import", shop.write("a.yaml", text + "\n").toString()))
                .anySatisfy(problem -> assertThat(problem).contains("a.yaml:", message, allowed));
        assertThat(shop.folder().resolve("book")).doesNotExist();
    }

    /** A form that is only tried out: priced with a site that stands nowhere, and the book knows nothing of it afterward. */
    @Test
    void formsLaidOver_areUsedAndNotStored() throws IOException {
        BookShop shop = BookShop.empty(folder.resolve("shop"), Database.SQLITE);
        String visit = shop.write("tried/out/late-call.yaml",
                Files.readString(shop.folder().resolve("visits/late-call.yaml"))).toString();
        String site = shop.folder().resolve("sites/pennon-wharf-taproom.yaml").toString();

        assertThat(shop.problems("price", visit).getFirst()).contains("there is no site \"pennon-wharf-taproom\"");
        assertThat(shop.json("price", visit, "--with", site).path("net").asString()).isEqualTo("276.58");
        assertThat(shop.folder().resolve("book")).doesNotExist();
    }

    @ParameterizedTest
    @EnumSource(value = Database.class, names = "POSTGRESQL")
    void twoProcessesAtOnce_bothAreTakenInWhole(Database database) throws Exception {
        assertBothTakenInWhole(database);
    }

    @Tag("long")
    @ParameterizedTest
    @EnumSource(value = Database.class, names = "SQLITE")
    void twoProcessesAtOnceInAFile_bothAreTakenInWhole(Database database) throws Exception {
        assertBothTakenInWhole(database);
    }

    private void assertBothTakenInWhole(Database database) throws Exception {
        BookShop shop = BookShop.empty(folder.resolve("shop"), database);
        shop.json("import", shop.folder().resolve("sites/hotel-fernhill.yaml").toString());
        List<Process> both = new ArrayList<>();
        for (String name : List.of("clinic", "pantry")) {
            both.add(new ProcessBuilder(OwnProcess.java(List.of(), Main.class,
                    List.of("import", form(shop, name).toString(), "--shop", shop.folder().toString())))
                    .redirectErrorStream(true).start());
        }
        for (Process one : both) {
            String told = new String(one.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(one.waitFor()).as(told).isZero();
        }

        assertThat(shop.json("site", "list").path("sites")).hasSize(3);
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** A site under a name of its own. */
    private static Path form(BookShop shop, String name) throws IOException {
        String clinic = Files.readString(shop.folder().resolve("sites/harbor-street-clinic.yaml"));
        return shop.write(name + ".yaml", clinic.replace("form: site", "form: site\nid: " + name));
    }

    private static String[] importing(List<Path> files) {
        return Stream.concat(Stream.of("import"), files.stream().map(Path::toString)).toArray(String[]::new);
    }

    private static String[] with(String[] more, String... line) {
        return Stream.of(line, more).flatMap(Stream::of).toArray(String[]::new);
    }

    private static List<String> states(JsonNode result) {
        List<String> states = new ArrayList<>();
        result.path("forms").forEach(form -> states.add(form.path("form").asString() + " " + form.path("id").asString()
                + " " + form.path("state").asString()));
        return states;
    }
}
