package icequill.web;

import icequill.answer.paper.PaperList;
import icequill.explain.ConstantKey;
import icequill.ledger.papers.PaperKind;
import icequill.office.care.AskedPeriod;
import icequill.office.care.PaperOffice;
import icequill.office.care.PaperWish;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The papers that somebody looks for; of this month where nothing is asked for. */
final class PapersPage implements Page {

    private static final int MOST = 100;
    private static final List<String> KINDS = Stream.of(PaperKind.INVOICE, PaperKind.CREDIT_NOTE,
            PaperKind.MAINTENANCE_QUOTE, PaperKind.REPAIR_QUOTE).map(ConstantKey::of).toList();
    private static final List<String> STATES = List.of("open", "part-paid", "paid", "credited");

    /**
     * What its page shows.
     *
     * @param wish what is looked for
     * @param isCut whether there may be more that fit
     */
    public record Shown(PaperWish wish, List<String> kinds, List<String> states, PaperList list, boolean isCut) {}

    @Override
    public Answer answer(Asked asked) {
        PaperWish wish = new PaperWish(asked.text("find").orElse(""),
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()), asked.texts("kind"),
                asked.text("state"), asked.text("caller"), asked.text("store"), MOST);
        PaperWish any = wish.isEmpty() ? wish.of(KINDS) : wish;
        return Answer.of(PaperOffice.of(asked.book()).find(any).map(PaperList::new),
                list -> new Answer.Shown("papers",
                        new Shown(wish, KINDS, STATES, list, list.papers().size() == MOST), list));
    }
}
