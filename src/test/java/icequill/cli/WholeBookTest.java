package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.FinishedDemo;
import icequill.answer.json.AnswerCheck;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code export book.json} hands to other programs. */
@Tag("wide")
class WholeBookTest {

    private static final String LANE = "--street 4-Mill-Lane --city Alderton --region NY --postal-code 10999 --country US";

    @TempDir
    Path folder;

    /** 31 papers, and the forms of the demo but for its payments, which stand there as they were noted. */
    @Test
    void ofTheDemo_isAsItsSchemaSays_andSoIsEachFormInIt() throws IOException {
        JsonNode book = book(new BookShop(FinishedDemo.copy(folder.resolve("demo"))));

        assertThat(AnswerCheck.problems("book", book)).isEmpty();
        assertThat(book.path("papers")).hasSize(31);
        assertThat(book.path("papers").get(0).path("data").path("paper").path("number").asString())
                .isEqualTo(book.path("papers").get(0).path("paper").path("issued").path("number").asString());
        assertThat(forms(book)).hasSize(48);
    }

    /** Programs give back what they were handed, and find each entry on a line of its own. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void formsInIt_takenInElsewhere_giveTheSameBook(Database database) throws IOException {
        BookShop shop = BookShop.empty(folder.resolve("shop"), database);
        List<String> line = new ArrayList<>(List.of("import"));
        DemoShop.forms(shop.folder()).forEach(file -> line.add(file.toString()));
        shop.json(line.toArray(String[]::new));
        shop.json(words("customer add mill --name Mill " + LANE));
        shop.json(words("site add lane --customer mill --name Lane --kind bakery --miles 3 --tax-place alder-county "
                + LANE));
        List<JsonNode> forms = forms(book(shop));
        Path handed = Files.writeString(folder.resolve("handed.yaml"),
                forms.stream().map(JsonNode::toString).collect(Collectors.joining("\n---\n")));

        BookShop other = BookShop.empty(folder.resolve("other"), Database.SQLITE);
        assertThat(other.json("import", handed.toString()).path("forms")).hasSize(forms.size());

        assertThat(book(other)).isEqualTo(book(shop));
        assertThat(forms.stream().filter(form -> form.path("id").asString().equals("lane"))
                .map(form -> form.path("machines").toString())).containsExactly("[]");
        assertThat(Files.readAllLines(folder.resolve("book.json"))).hasSizeGreaterThan(forms.size());
    }

    private JsonNode book(BookShop shop) throws IOException {
        Path file = folder.resolve("book.json");
        shop.json("export", file.toString(), "--replace");
        return JsonMapper.shared().readTree(Files.readString(file));
    }

    private static List<JsonNode> forms(JsonNode book) {
        return book.valueStream().flatMap(JsonNode::valueStream).filter(entry -> entry.has("form"))
                .map(entry -> entry.path("form")).toList();
    }

    private static String[] words(String line) {
        return line.split(" ", -1);
    }
}
