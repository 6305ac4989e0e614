package icequill.render.pdf;

import icequill.render.drawing.AlternativeText;
import icequill.render.words.Fonts;
import icequill.render.words.Shaping;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfStructureElement;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xhtmlrenderer.extend.FSImage;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.JustificationInfo;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * Paints a paper and says of everything painted what it is (tagged PDF, ISO 32000-1, 14.8): text and pictures of the page
 * belong to their elements; lines, backgrounds, list marks, page furniture and heads repeated on later pages are artifacts,
 * which a screen reader passes over.
 */
final class TaggedDevice extends ITextOutputDevice {

    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final float HUNDRED = 100;

    /** What was painted once is content; painted again, on a later page, it is an artifact. */
    private final Set<Object> painted = Collections.newSetFromMap(new IdentityHashMap<>());
    private @Nullable StructureTree tree;
    private int marks;
    private boolean marking;
    private String lineEnd = "";
    private @Nullable ITextFSFont font;

    TaggedDevice() {
        super(ITextRenderer.DEFAULT_DOTS_PER_POINT);
    }

    StructureTree tree() {
        return Objects.requireNonNull(tree, "not painting");
    }

    @Override
    public void setWriter(PdfWriter writer) {
        super.setWriter(writer);
        tree = new StructureTree(writer.getStructureTreeRoot());
    }

    @Override
    public void initializePage(PdfContentByte page, float height) {
        super.initializePage(page, height);
        marks = 0;
    }

    @Override
    public void drawText(RenderingContext context, InlineText text) {
        InlineLayoutBox box = Objects.requireNonNull(text.getParent());
        if (text.getSubstring().isEmpty() || PageEnds.isElsewhere(Objects.requireNonNull(context.getPage()), box)) {
            return;
        }
        Text node = text.getTextNode();
        if (node == null || isArtifact(text, box)) {
            artifact(() -> super.drawText(context, text));
            return;
        }
        lineEnd = lineEnd(text);
        content(node, text.getStart(), () -> super.drawText(context, text));
        lineEnd = "";
        LinkTarget.around(node).filter(link -> painted.add(box))
                .ifPresent(link -> link(link, node, text.getStart(), createLocalTargetArea(context, box)));
    }

    @Override
    public void paintReplacedElement(RenderingContext context, BlockBox box) {
        Element element = box.getElement();
        String words = element == null ? "" : AlternativeText.words(element);
        if (element == null || words.isEmpty() || isArtifact(box, box)) {
            artifact(() -> super.paintReplacedElement(context, box));
            return;
        }
        PdfStructureElement figure = tree().owner(element);
        AlternativeText.describe(figure, words, createLocalTargetArea(context, box));
        content(element, 0, () -> super.paintReplacedElement(context, box));
    }

    @Override
    public void setFont(ITextFSFont next) {
        super.setFont(next);
        font = next;
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo info) {
        ITextFSFont now = Objects.requireNonNull(font, "no font");
        artifactUnlessMarking(Fonts.isShaped(now.getFontDescription().getFont())
                ? () -> drawShaped(text, now, x, y)
                : () -> super.drawString(text + lineEnd, x, y, info));
    }

    /** The outlines, and behind them, as wide, the text. */
    private void drawShaped(String text, ITextFSFont with, float x, float y) {
        super.fill(AffineTransform.getTranslateInstance(x, y)
                .createTransformedShape(Shaping.outline(text, with.getSize2D())));
        float plain = with.getFontDescription().getFont().getWidthPoint(text, with.getSize2D());
        PdfContentByte page = page();
        page.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_INVISIBLE);
        page.setHorizontalScaling(plain > 0 ? HUNDRED * Shaping.width(text, with.getSize2D()) / plain : HUNDRED);
        super.drawString(Shaping.visual(text) + lineEnd, x, y, null);
        page.setHorizontalScaling(HUNDRED);
        page.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_FILL);
    }

    @Override
    public void draw(Shape shape) {
        artifactUnlessMarking(() -> super.draw(shape));
    }

    @Override
    public void fill(Shape shape) {
        artifactUnlessMarking(() -> super.fill(shape));
    }

    @Override
    public void drawImage(FSImage image, int x, int y) {
        artifactUnlessMarking(() -> super.drawImage(image, x, y));
    }

    /** The space at which a line was broken is not painted of itself, but it parts two words. */
    private static String lineEnd(InlineText text) {
        return text.getMasterText().startsWith(" ", text.getEnd()) ? " " : "";
    }

    private boolean isArtifact(Object content, Box box) {
        return box.isContainedInMarginBox() || !painted.add(content);
    }

    private void content(Node node, int offset, Runnable painting) {
        PdfContentByte page = page();
        PdfStructureElement owner = tree().owner(node);
        page.beginMarkedContentSequence(owner);
        tree().add(node, offset, StructureTree.content(writer().getCurrentPage(), marks));
        marks++;
        mark(page, painting);
    }

    private void artifact(Runnable painting) {
        PdfContentByte page = page();
        page.beginMarkedContentSequence(ARTIFACT, new PdfDictionary(), true);
        mark(page, painting);
    }

    private void artifactUnlessMarking(Runnable painting) {
        if (marking) {
            painting.run();
        } else {
            artifact(painting);
        }
    }

    private void mark(PdfContentByte page, Runnable painting) {
        marking = true;
        painting.run();
        page.endMarkedContentSequence();
        marking = false;
    }

    private void link(LinkTarget link, Node node, int offset, Rectangle area) {
        PdfStructureElement owner = tree().owner(link.anchor());
        tree().add(node, offset, LinkArea.on(writer(), link, area, tree().key(owner)));
    }

    private PdfWriter writer() {
        return Optional.ofNullable(getWriter()).orElseThrow();
    }

    private PdfContentByte page() {
        return Optional.ofNullable(getCurrentPage()).orElseThrow();
    }
}
