package icequill.answer;

import icequill.answer.forecast.FittedClock;
import icequill.document.FitSheet;
import icequill.files.answer.Sheet;
import icequill.outlook.SideFit;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A fit, with its sheet. */
public final class FitResult implements Sheet {

    private final Optional<WrittenPaper> paper;
    private final FitSheet sheet;
    private final List<SideFit> fits;

    public FitResult(Optional<WrittenPaper> paper, FitSheet sheet, List<SideFit> fits) {
        this.paper = paper;
        this.sheet = sheet;
        this.fits = List.copyOf(fits);
    }

    /** The same once its sheet is written. */
    public FitResult with(WrittenPaper written) {
        return new FitResult(Optional.of(written), sheet, fits);
    }

    public FitSheet sheet() {
        return sheet;
    }

    /** Empty where its sheet was not written. */
    public Optional<WrittenPaper> paper() {
        return paper;
    }

    /** What was found, line by line, and the lines for the shop's file. */
    public List<String> lines() {
        Sentences sentences = Sentences.of(sheet.language(), sheet.shop().address().country());
        Stream<String> found = sheet.plots().stream().flatMap(plot -> Stream.concat(
                Stream.of(sentences.say(plot.title())),
                Stream.concat(plot.said().stream().map(phrase -> "  " + sentences.say(phrase)), Stream.of(""))));
        Stream<String> notes = sheet.notes().stream().map(sentences::say);
        return Stream.concat(Stream.concat(found, notes), sheet.settings().isEmpty()
                ? Stream.of(sentences.word("fit.settings-stay"))
                : Stream.concat(Stream.of(sentences.word("fit.settings")), sheet.settings().stream())).toList();
    }

    /**
     * What JSON shows of it.
     *
     * @param paper missing where its sheet was not written
     * @param settings lines for the shop's file
     */
    public record Data(Optional<WrittenPaper> paper, List<FittedClock> fits, List<String> settings) {}

    @Override
    public Data data() {
        return new Data(paper, fits.stream().map(FittedClock::of).toList(), sheet.settings());
    }
}
