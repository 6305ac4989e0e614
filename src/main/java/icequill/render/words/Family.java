package icequill.render.words;

import java.util.List;

/** The families that papers are set in, in the order in which they are asked for a character. */
public enum Family {
    /** Of openpdf-fonts-extra. */
    FIRST("Liberation Sans", "liberation/LiberationSans-Regular.ttf", "liberation/LiberationSans-Bold.ttf",
            "liberation/LiberationSans-Italic.ttf", "liberation/LiberationSans-BoldItalic.ttf"),
    /** Of jasperreports-fonts. */
    SIGNS("DejaVu Sans", "net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf",
            "net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf"),
    /** Chinese and Japanese, of ph-fonts-noto-sans-sc. */
    HAN("Noto Sans SC", "fonts/ttf/NotoSansSC/NotoSansSC-Regular.ttf"),
    /** Korean, our own resource. */
    HANGUL("NanumSquare", "icequill/fonts/NanumSquareR.ttf"),
    /** Scripts that must be shaped, of ph-fonts-kurinto-sans. */
    SHAPED("Kurinto Sans", "fonts/ttf/Kurinto/KurintoSans-Rg.ttf");

    private final String style;
    private final String files;

    Family(String style, String... files) {
        this.style = style;
        this.files = String.join("\n", files);
    }

    /** What a style sheet calls it. */
    public String style() {
        return style;
    }

    /** Resources, the plain face first. */
    List<String> files() {
        return files.lines().toList();
    }
}
