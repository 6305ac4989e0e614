package icequill.web.visit;

import icequill.answer.history.VisitListing;
import icequill.answer.history.VisitState;
import icequill.explain.ConstantKey;
import icequill.office.care.AskedPeriod;
import icequill.office.care.VisitListOffice;
import icequill.office.care.VisitWish;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Visits, the newest first. */
public final class VisitsPage implements Page {

    private static final int MOST = 100;

    /**
     * What its page shows.
     *
     * @param states that can be asked for
     * @param begun what somebody began to type and did not store
     * @param state that is asked for, or no letters
     */
    public record Shown(String find, String month, String state, List<String> states, List<VisitDraft.Offered> begun,
            VisitListing list) {}

    @Override
    public Answer answer(Asked asked) {
        Optional<String> state = asked.text("state");
        VisitWish wish = new VisitWish(asked.text("site"), asked.text("customer"), asked.text("machine"),
                asked.text("by"), asked.text("caller"), asked.text("find"), false,
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()),
                Arrays.stream(VisitState.values())
                        .filter(each -> state.filter(ConstantKey.of(each)::equals).isPresent())
                        .collect(Collectors.toSet()),
                MOST);
        return Answer.of(VisitListOffice.of(asked.book()).visits(wish, Optional.of(asked.reader().language())),
                found -> new Answer.Shown("visits",
                        new Shown(asked.text("find").orElse(""), asked.text("month").orElse(""), state.orElse(""),
                                Arrays.stream(VisitState.values()).map(ConstantKey::of).toList(), VisitDraft.all(asked),
                                found.data()),
                        found.data()));
    }
}
