package icequill.answer;

import icequill.answer.price.BrushingFigures;
import icequill.document.BrushingSheet;
import icequill.files.answer.Sheet;

/** A brushing sheet that was written, and all that stands on it. */
public record BrushingResult(WrittenPaper paper, BrushingSheet sheet) implements Sheet {

    /** What JSON shows of it. */
    public record Data(WrittenPaper paper, BrushingFigures sheet) {}

    @Override
    public Data data() {
        return new Data(paper, BrushingFigures.of(sheet));
    }
}
