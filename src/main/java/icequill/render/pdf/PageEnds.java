package icequill.render.pdf;

import java.util.stream.Stream;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.LineBox;
import org.xhtmlrenderer.render.PageBox;

/**
 * On which page a line of text stands. The renderer paints one on two pages when its box touches both, and begins a page for an
 * empty margin; a line belongs to the page that holds its middle.
 */
final class PageEnds {

    private PageEnds() {
    }

    /** Whether text in the flow of pages stands on another one. */
    static boolean isElsewhere(PageBox page, InlineLayoutBox text) {
        int middle = middle(text.getLineBox());
        return !text.isContainedInMarginBox() && (middle < page.getTop() || middle >= page.getBottom());
    }

    /** Where the last line or picture stands, in dots from the top of the first page. */
    static int lastLine(Box box) {
        int own = switch (box) {
        case LineBox line -> middle(line);
        case BlockBox block when block.isReplaced() -> block.getAbsY();
        default -> 0;
        };
        Stream<Box> children = box.getChildren().stream();
        return children.mapToInt(PageEnds::lastLine).reduce(own, Math::max);
    }

    private static int middle(LineBox line) {
        return line.getAbsY() + line.getHeight() / 2;
    }
}
