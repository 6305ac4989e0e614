package icequill.document;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.problem.Check;
import java.time.LocalDate;

/** A brushing sheet in two languages, one on each side of the sheet. */
public record BrushingSheetPair(BrushingSheet front, BrushingSheet back) implements Paper {

    public BrushingSheetPair {
        Check.that(!front.language().equals(back.language()), "twice " + front.language());
    }

    @Override
    public Shop shop() {
        return front.shop();
    }

    @Override
    public Language language() {
        return front.language();
    }

    @Override
    public PaperSize size() {
        return front.size();
    }

    @Override
    public LocalDate date() {
        return front.date();
    }
}
