package icequill.render;

import icequill.document.Attachment;
import icequill.document.Paper;
import icequill.problem.Validated;
import icequill.render.limits.PrintRoom;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.pdf.Html;
import icequill.render.pdf.Logo;
import icequill.render.pdf.PdfSetter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prints papers with the templates of one shop. Safe for use by many threads. */
public final class Printer {

    /** The template of every paper's style sheet. */
    static final String STYLE = "paper.css.ftl";

    private final Path shop;
    private final Templates templates;
    private final PrintRoom room;

    private Printer(Path shop, Templates templates, PrintRoom room) {
        this.shop = shop;
        this.templates = templates;
        this.room = room;
    }

    /**
     * A printer for one shop.
     *
     * @param shop the shop folder, whose templates/ may hold templates of its own
     */
    public static Printer of(Path shop) {
        return of(shop, PrintRoom.USUAL);
    }

    /** The same with limits of its own. */
    public static Printer of(Path shop, PrintRoom room) {
        return new Printer(shop, Templates.of(shop.resolve("templates")), room);
    }

    /** The paper as HTML, or what is wrong with the template. */
    public Validated<Html> html(Paper paper) {
        return room.print(() -> fill(PaperPage.of(paper), paper));
    }

    /**
     * The page as PDF, or what is wrong with it.
     *
     * @param attachments files to carry within it; may be empty
     * @param marks what the shop's book says of a paper that it numbered, by name, for its metadata; empty for others
     */
    public Validated<byte[]> pdf(Paper paper, Html html, List<Attachment> attachments, Map<String, String> marks) {
        return room.print(() -> new PdfSetter(shop).set(paper, html, attachments, marks));
    }

    private Validated<Html> fill(PaperPage filling, Paper paper) {
        Page page = filling.page();
        return Logo.of(paper.shop(), shop).then(logo -> templates.fill(STYLE, page).then(
                style -> templates.fill(filling.template(), page.with(new Dress(logo, style))).map(Html::new)));
    }

    /** What makes the page look like the shop's. */
    record Dress(Optional<Logo> logo, String style) implements Texts {}
}
