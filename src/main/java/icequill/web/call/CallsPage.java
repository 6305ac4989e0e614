package icequill.web.call;

import icequill.answer.call.CallListing;
import icequill.answer.call.CallStage;
import icequill.explain.ConstantKey;
import icequill.office.call.CallListOffice;
import icequill.office.call.CallWish;
import icequill.office.care.AskedPeriod;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Calls, the newest first, and how soon somebody came. */
public final class CallsPage implements Page {

    private static final int MOST = 100;

    /**
     * What its page shows.
     *
     * @param states that can be asked for
     * @param state that is asked for, or no letters
     */
    public record Shown(String find, String month, String state, List<String> states, CallListing list) {}

    @Override
    public Answer answer(Asked asked) {
        Optional<String> state = asked.text("state");
        CallWish wish = new CallWish(asked.text("site"), asked.text("customer"), asked.text("machine"),
                asked.text("caller"), asked.text("find"),
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()),
                Arrays.stream(CallStage.values())
                        .filter(each -> state.filter(ConstantKey.of(each)::equals).isPresent())
                        .collect(Collectors.toSet()),
                MOST);
        return Answer.of(CallListOffice.of(asked.book()).calls(wish, Optional.of(asked.reader().language())),
                found -> new Answer.Shown("calls",
                        new Shown(asked.text("find").orElse(""), asked.text("month").orElse(""), state.orElse(""),
                                Arrays.stream(CallStage.values()).map(ConstantKey::of).toList(), found.data()),
                        found.data()));
    }
}
