package icequill.web;

import icequill.answer.Reprint;
import icequill.answer.shown.PaperSheet;
import icequill.explain.ConstantKey;
import icequill.office.care.ShowOffice;
import icequill.office.care.Shows;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A paper of the book, and what can be done with it. */
final class PaperPage implements Page {

    private static final Set<String> WAYS = Arrays.stream(Reprint.Way.values()).map(ConstantKey::of)
            .collect(Collectors.toUnmodifiableSet());

    /**
     * What its page shows.
     *
     * @param file how its file was found, right after somebody had it looked for
     */
    public record Shown(PaperSheet paper, Optional<String> file) {}

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(ShowOffice.of(asked.book()).show(new FormName.InBook(asked.part("number")), Shows.PAPER,
                Optional.of(asked.reader().language())).map(shown -> shown.paper().orElseThrow()),
                sheet -> new Answer.Shown("paper", new Shown(sheet, asked.text("file").filter(WAYS::contains)),
                        sheet.data()));
    }
}
