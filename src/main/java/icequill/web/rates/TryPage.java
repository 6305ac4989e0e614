package icequill.web.rates;

import icequill.answer.rates.WhatIf;
import icequill.office.care.AskedPeriod;
import icequill.office.care.RatesOffice;
import icequill.office.care.WhatIfOffice;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Rates tried on the visits that were done. */
public final class TryPage implements Page {

    /**
     * What its page shows.
     *
     * @param versions that the book holds
     * @param tried empty before it was asked for
     */
    public record Shown(List<String> versions, Optional<WhatIf> tried, TypedFields typed) {

        public Shown {
            versions = List.copyOf(versions);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        List<String> versions = RatesOffice.of(asked.book()).list().found().stream()
                .flatMap(list -> list.versions().stream()).filter(version -> !version.adopted().isEmpty())
                .map(version -> version.version()).toList();
        if (asked.fields().isEmpty()) {
            return new Answer.Shown("rates-try", new Shown(versions, Optional.empty(), TypedFields.NONE), versions);
        }
        Validated<WhatIf> tried = tried(asked);
        return Answer.Shown.orProblems("rates-try",
                new Shown(versions, tried.found(), new TypedFields(asked.fields(), tried.problems())), tried);
    }

    private static Validated<WhatIf> tried(Asked asked) {
        Problems problems = new Problems();
        Optional<LocalDate> on = asked.day("on", problems);
        Optional<LocalDate> from = asked.day("from", problems);
        Optional<LocalDate> until = asked.day("until", problems);
        return problems.or(() -> on.orElse(asked.reader().today()))
                .then(day -> WhatIfOffice.of(asked.book()).of(asked.text("version"), day,
                        new AskedPeriod(Optional.empty(), from, until)));
    }
}
