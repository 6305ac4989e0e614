package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Paper;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.pdf.Html;
import icequill.render.pdf.SpokenText;
import icequill.render.words.Family;
import icequill.render.words.FontRun;
import icequill.render.words.Fonts;
import icequill.render.words.Shaping;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Names in the scripts that customers write them in. What letters do beside each other is told by The Unicode Standard, chapters 9, 12 and 16. */
@Tag("wide")
class ScriptsTest {

    private static final float SIZE = 1000;

    @TempDir
    private Path shop;

    private static final List<String> NAMES = List.of("味全海鲜酒楼有限公司,NotoSansSC", "さくら水産株式会社 渋谷駅前店,NotoSansSC",
            "한강횟집 주식회사,NanumSquare", "ร้านอาหารครัวเชียงใหม่,KurintoSans", "श्री कृष्ण मिष्ठान्न भण्डार,KurintoSans",
            "মিষ্টি ভাণ্ডার,KurintoSans", "அண்ணா உணவகம்,KurintoSans", "مطعم النخيل الذهبي,KurintoSans",
            "מסעדת הים התיכון,KurintoSans");

    /** On a paper in English or Spanish, by turns. */
    @ParameterizedTest
    @FieldSource("NAMES")
    void name_isSetInItsFont_readCopiedAndArchived(String nameAndFont) throws Exception {
        assertSet(nameAndFont, List.of(NAMES.indexOf(nameAndFont) % 2 == 0 ? Language.ENGLISH : Language.SPANISH));
    }

    @Tag("long")
    @ParameterizedTest
    @FieldSource("NAMES")
    void name_onPapersInBothLanguages_isSetInItsFontReadCopiedAndArchived(String nameAndFont) throws Exception {
        assertSet(nameAndFont, List.of(Language.ENGLISH, Language.SPANISH));
    }

    private void assertSet(String nameAndFont, List<Language> languages) throws Exception {
        String name = nameAndFont.substring(0, nameAndFont.indexOf(','));
        String font = nameAndFont.substring(nameAndFont.indexOf(',') + 1);
        Printer printer = Printer.of(shop);
        for (Language language : languages) {
            Paper paper = InvoiceFixture
                    .of(language, language.equals(Language.ENGLISH) ? PaperSize.LETTER : PaperSize.A4, "USD", "US")
                    .withCustomer(name).papers().getFirst();
            Html html = printer.html(paper).orElseThrow();

            byte[] pdf = printer.pdf(paper, html, List.of(), Map.of()).orElseThrow();

            assertThat(Fonts.missing(name)).isEmpty();
            assertThat(fonts(pdf)).anyMatch(used -> used.matches("ICEQ[A-Z]{2}\\+" + font + ".*"));
            assertThat(String.join("", PaperPages.of(pdf))).contains(name);
            assertThat(SpokenText.of(pdf).text()).contains(name).isEqualTo(SpokenText.written(html));
            assertThat(printer.pdf(paper, html, List.of(), Map.of()).orElseThrow()).isEqualTo(pdf);
            for (String standard : VeraPdf.STANDARDS) {
                assertThat(VeraPdf.brokenRules(pdf, standard)).as(name + " " + standard).isEmpty();
            }
            assertThat(VeraPdf.brokenByMachine(pdf)).as(name).isEmpty();
        }
    }

    /** Set letter by letter, each of these would be as wide as its letters. */
    @Test
    void letters_joinStackAndChangePlaces() {
        assertThat(width("لا")).as("lam and alef are one sign").isLessThan(0.95f * (width("ل") + width("ا")));
        assertThat(width("ที่")).as("a vowel and a tone above the consonant").isEqualTo(width("ท"));
        assertThat(width("क्ष")).as("ka and ssa are one sign").isLessThan(0.8f * (width("क") + width("ष")));
    }

    @Test
    void rightToLeft_withItsNumbers_isOneStretchTurnedAround() {
        assertThat(Shaping.visual("רחוב הרצל 12")).isEqualTo("12 לצרה בוחר");
        assertThat(FontRun.of("Site: רחוב הרצל 12, Haifa")).containsExactly(new FontRun(Family.FIRST, "Site: "),
                new FontRun(Family.SHAPED, "רחוב הרצל 12"), new FontRun(Family.FIRST, ", Haifa"));
        assertThat(FontRun.of("אין קרח. No ice.")).containsExactly(new FontRun(Family.SHAPED, "אין קרח."),
                new FontRun(Family.FIRST, " No ice."));
        assertThat(FontRun.of("冰 ice ไทย")).containsExactly(new FontRun(Family.HAN, "冰"),
                new FontRun(Family.FIRST, " ice "), new FontRun(Family.SHAPED, "ไทย"));
    }

    private static float width(String text) {
        return Shaping.width(text, SIZE);
    }

    private static List<String> fonts(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDResources resources = document.getPage(0).getResources();
            List<String> fonts = new ArrayList<>();
            for (COSName name : resources.getFontNames()) {
                fonts.add(resources.getFont(name).getName());
            }
            return fonts;
        }
    }
}
