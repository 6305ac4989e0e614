package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the shop is set up, changed by a page and at the terminal: one setting and nothing else, or nothing. */
class SettingsTest {

    /** One red point. */
    private static final byte[] PICTURE = Base64.getDecoder().decode(
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==");

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() {
        office = OpenOffice.withVisits(folder, "ten-minute-brushing");
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void oneSetting_isChanged_andEveryOtherLineStays() throws IOException {
        String before = text();

        assertThat(sent(Map.of("phone", "555-0199 \"day\" # and night", "payment-days", "14")).statusCode())
                .isEqualTo(303);

        assertThat(text()).isEqualTo(before.replaceFirst("\nphone: 555-0142\n",
                "\nphone: \"555-0199 \\\\\"day\\\\\" # and night\"\n").replace("paymentDays: 30", "paymentDays: 14"));
        assertThat(owner.get("/shop").body()).contains("555-0199 &quot;day&quot; # and night");
        assertThat(owner.json("/shop").path("paymentDays").asInt()).isEqualTo(14);
    }

    /** A color that cannot be read on paper, a size that there is none of, a language without words. */
    @Test
    void whatWouldBeWrong_isToldAtItsField_andNothingIsChanged() throws IOException {
        String before = text();

        HttpResponse<String> answer = sent(
                Map.of("accent", "#ffff00", "paper", "foolscap", "name", "Kept as typed"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"error-accent-0\"", "id=\"error-paper-0\"", "value=\"Kept as typed\"");
        assertThat(text()).isEqualTo(before);
    }

    @Test
    void emptiedField_isTold_notPassedOver() throws IOException {
        String before = text();

        HttpResponse<String> answer = sent(Map.of("phone", "", "email", "new@quillwater.example"));

        assertThat(answer.body()).contains("id=\"error-phone-0\"");
        assertThat(text()).isEqualTo(before);
    }

    @Test
    void changedMeanwhile_isTold() throws IOException {
        String version = version();
        sent(Map.of("phone", "555-0177"));

        HttpResponse<String> late = owner.post("/shop/change",
                Map.of("key", owner.key("/shop/change"), "version", version, "phone", "555-0166"));

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("how the shop is set up", "<td>555-0166</td><td>555-0177</td>");
        assertThat(text()).contains("phone: \"555-0177\"");
    }

    @Test
    void picture_isPutOnPapers_andWhatIsNoneIsNot() throws IOException {
        assertThat(handed("logo.svg", "<svg/>".getBytes(StandardCharsets.UTF_8)).body()).contains("no picture");
        assertThat(handed("half.png", Arrays.copyOf(PICTURE, 40)).body()).contains("This picture cannot be used");
        assertThat(text()).doesNotContain("logo:");
        assertThat(folder.resolve("logo.png")).doesNotExist();

        assertThat(handed("../../x.exe", PICTURE).statusCode()).isEqualTo(303);

        assertThat(text()).contains("logo: \"logo.png\"");
        assertThat(Files.readAllBytes(folder.resolve("logo.png"))).isEqualTo(PICTURE);
        assertThat(owner.json("/shop").path("logo").asString()).isEqualTo("logo.png");
    }

    @Test
    void terminal_changesTheSame_andTellsWhatItDoesNotKnow() throws IOException {
        Run changed = Run.at(OpenOffice.CLOCK, "shop", "change", "city=New Alder", "--shop", folder.toString());
        Run unknown = Run.at(OpenOffice.CLOCK, "shop", "change", "town=Alder", "--shop", folder.toString());

        assertThat(changed.status()).as(changed.err()).isZero();
        assertThat(changed.out()).contains("New Alder");
        assertThat(text()).contains("  city: \"New Alder\"", "# An invented shop.");
        assertThat(unknown.status()).isEqualTo(3);
        assertThat(unknown.err()).contains("there is no setting \"town\"");
    }

    private String text() throws IOException {
        return Files.readString(folder.resolve("shop.yaml"));
    }

    private String version() {
        return owner.get("/shop/change").body().replaceFirst("(?s).*name=\"version\" value=\"([0-9a-f]+)\".*", "$1");
    }

    private HttpResponse<String> sent(Map<String, String> fields) {
        Map<String, String> all = new HashMap<>(fields);
        all.put("key", owner.key("/shop/change"));
        all.put("version", version());
        return owner.post("/shop/change", all);
    }

    private HttpResponse<String> handed(String name, byte[] content) {
        String before = "--edge\r\nContent-Disposition: form-data; name=\"key\"\r\n\r\n" + owner.key("/shop/change")
                + "\r\n--edge\r\nContent-Disposition: form-data; name=\"version\"\r\n\r\n" + version()
                + "\r\n--edge\r\nContent-Disposition: form-data; name=\"logo-file\"; filename=\"" + name + "\"\r\n\r\n";
        return owner.post("/shop/change",
                BodyPublishers.ofString(before + new String(content, StandardCharsets.ISO_8859_1) + "\r\n--edge--\r\n",
                        StandardCharsets.ISO_8859_1),
                "multipart/form-data; boundary=edge");
    }
}
