package icequill.render.pdf;

import icequill.render.words.DateForms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.UrlAwareLineBreakIterator;

/** Where a line may end: between words, and never within a date, a time or a number, whatever signs or spaces it is written with. */
final class LineEnds implements LineBreakingStrategy {

    /** As in INV-2026-00012 or 555-0142; a longer one, such as the address of a page, may be torn. */
    private static final String HYPHENED = "(?<!\\S)(?=\\S{0,30}\\d)(?=\\S{0,30}[-/])\\S{1,30}(?!\\S)";
    /** As in 0042 7711. */
    private static final String GROUPED = "\\+?\\d{2,}(?: \\d{2,})+";

    /** As in 8:00 AM or 8:00 a. m. */
    private static final String TIME = "\\d{1,2}:\\d{2}(?:[ \u00a0][AaPp]\\.?[ \u00a0]?[Mm]\\.?)?";

    private final Pattern whole;
    /** The renderer asks for the same text for its least width, its most and its lines. */
    private final Map<String, List<Integer>> found = new HashMap<>();

    /** @param dates how the paper writes a day */
    LineEnds(DateForms dates) {
        whole = Pattern.compile(HYPHENED + "|" + GROUPED + "|" + TIME + "|" + dates.pattern());
    }

    @Override
    public BreakPointsProvider getBreakPointsProvider(String text, String language, CalculatedStyle style) {
        Iterator<BreakPoint> ends = found.computeIfAbsent(text, this::of).stream().map(BreakPoint::new).iterator();
        return () -> ends.hasNext() ? ends.next() : BreakPoint.getDonePoint();
    }

    /** The places after which a text may go on in the next line. */
    List<Integer> of(String text) {
        // All that is kept whole holds a digit.
        List<MatchResult> kept = text.chars().anyMatch(Character::isDigit)
                ? whole.matcher(text).results().toList()
                : List.of();
        UrlAwareLineBreakIterator words = new UrlAwareLineBreakIterator(text);
        List<Integer> ends = new ArrayList<>();
        for (int end = words.next(); end != UrlAwareLineBreakIterator.DONE; end = words.next()) {
            int at = end;
            if (kept.stream().noneMatch(number -> number.start() < at && at < number.end())) {
                ends.add(at);
            }
        }
        return ends;
    }
}
