package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a brushing sheet says it goes by: at the bakery visits of 14 April and 13 May brushed the proof room's condenser; it was first visited on 10 February. */
@Tag("wide")
class BrushingReadsTheBookTest {

    @TempDir
    private Path folder;
    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void open() throws IOException {
        shop = BookShop.in(folder, Database.SQLITE);
        for (String visit : List.of("found-nobody-bakery", "spring-cleaning-bakery", "ten-minute-brushing",
                "warranty-pump-bakery")) {
            shop.json("visit", "add", folder.resolve("visits/" + visit + ".yaml").toString());
        }
    }

    @Test
    void requestThatSaysNothing_goesByTheVisitsUpToItsDay() throws IOException {
        assertThat(inputs("", "2026-07-01")).containsExactly(
                "proof room: condenser last brushed May 13, 2026. (from our 4 visits since February 10, 2026)",
                "Our book knows your site for less than a year: too little to say how often your machines stop."
                        + " (from our 4 visits since February 10, 2026)");
        assertThat(inputs("", "2026-05-01").getFirst()).isEqualTo(
                "proof room: condenser last brushed April 14, 2026. (from our 2 visits since February 10, 2026)");
        assertThat(inputs("", "2026-03-01").getFirst())
                .startsWith("proof room: none of our visits brushed the condenser")
                .endsWith(
                        "we took 12 months, or its age where it is newer. (from our 1 visit since February 10, 2026)");
        assertThat(inputs("", "2026-02-01")).singleElement().asString()
                .startsWith("proof room: nobody knows when the condenser was brushed last").endsWith("(our estimate)");
    }

    @Test
    void whatTheCustomerSays_comesFirst() throws IOException {
        assertThat(inputs("lastBrushed: 2026-06-20", "2026-07-01").getFirst())
                .isEqualTo("proof room: condenser last brushed June 20, 2026. (as you told us)");
    }

    /** What is brushed later stops less, so that brushing it every month saves fewer calls. */
    @Test
    void brushingOnRecord_movesTheCalls() throws IOException {
        assertThat(calls("2026-05-14")).isLessThan(calls("2026-04-13"));
    }

    private double calls(String day) throws IOException {
        return shop.json("brushing", request(""), "--date", day).path("sheet").path("savings").path("calls").asDouble();
    }

    private List<String> inputs(String more, String day) throws IOException {
        return shop.json("brushing", request(more), "--date", day).path("sheet").path("savings").path("inputs")
                .valueStream()
                .map(input -> (input.path("what").asString() + " (" + input.path("origin").asString() + ")")
                        .replace('\u00a0', ' '))
                .toList();
    }

    private String request(String more) throws IOException {
        return shop.write("brushing/asked.yaml", """
                format: 1
                form: brushing-request
                site: crumb-lane-bakery
                minutes: 10
                wage: 22.00
                brush: 8.00
                bought: 1
                reachable: [proof-room]
                %s
                """.formatted(more)).toString();
    }
}
