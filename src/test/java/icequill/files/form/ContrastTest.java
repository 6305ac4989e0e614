package icequill.files.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.problem.Code;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast on white, of which texts need 4.5:1 (WCAG 2.2, 1.4.3). */
class ContrastTest {

    @TempDir
    Path temporary;

    /** Black is 21:1 and white 1:1 by definition; #767676 is the lightest gray that passes, and #777777 the darkest that does not. */
    @ParameterizedTest
    @CsvSource({"#000000, 21.00", "#ffffff, 1.00", "#767676, 4.54", "#777777, 4.48", "#ff0000, 4.00", "#0000ff, 8.59"})
    void color_onWhite_asPublished(String color, double contrast) {
        assertThat(Contrast.onWhite(color)).isCloseTo(contrast, within(0.005));
    }

    @Test
    void paleAccent_isAProblemOfTheShop() throws IOException {
        Path folder = DemoShop.files(temporary.resolve("shop"));
        Path shop = folder.resolve("shop.yaml");
        Files.writeString(shop, Files.readString(shop).replace("#1f4e5f", "#777777"));

        ShopFolder read = DemoShop.read(folder);

        read.shop();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(Code.NOT_ALLOWED);
            assertThat(problem.place().path()).isEqualTo("accent");
            assertThat(problem.text()).contains("of 4.48:1 on white paper", "a darker one");
        });
    }
}
