package icequill.web.visit;

import icequill.answer.entry.VisitChoices;
import icequill.answer.price.VisitPrice;
import icequill.office.asking.AskingOffice;
import icequill.office.billing.IssueOptions;
import icequill.office.quoting.RepairQuoteOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the quote of a repair, by itself or of what a visit recommended, with its price beside it, and issues it. */
public final class RepairEntry implements Page, FormPage {

    private static final String DAY = "day";

    /**
     * What its page shows.
     *
     * @param price empty before anything was typed
     * @param hindrances that keep it from having one, each at its field
     */
    public record Shown(VisitChoices choices, Optional<VisitPrice> price, List<Problem> hindrances,
            TypedFields typed) {}

    /** The page as it is opened, or as it stands while somebody types. */
    @Override
    public Answer answer(Asked asked) {
        if (asked.text(DAY).isEmpty()) {
            return shown(asked, Optional.empty(), new TypedFields(recommended(asked), List.of()), List.of());
        }
        RepairForm form = RepairForm.of(asked, asked.part("site"));
        Validated<VisitPrice> price = form.draft().then(draft -> RepairQuoteOffice.of(asked.book())
                .price(draft, today(asked), asked.reader().language())).map(sheet -> sheet.data(false));
        List<Problem> wrong = form.atFields(price.problems());
        return shown(asked, price.found(), new TypedFields(asked.fields(), wrong), wrong);
    }

    /** What a list says of a repair that was recommended. */
    private static Map<String, List<String>> recommended(Asked asked) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        asked.text("machine").ifPresent(machine -> fields.put("machine", List.of(machine)));
        asked.text("recommended").ifPresent(text -> {
            fields.put("work", List.of(text));
            asked.text("visit").ifPresent(
                    visit -> fields.put("found", List.of(new EarlierRepair(visit, text).text())));
        });
        return fields;
    }

    @Override
    public Validated<String> done(Asked asked) {
        return RepairForm.of(asked, asked.part("site")).draft()
                .then(draft -> RepairQuoteOffice.of(asked.book()).issue(draft,
                        new IssueOptions(today(asked), Optional.empty())))
                .map(paper -> Paths.quote(paper.number()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        RepairForm form = RepairForm.of(asked, asked.part("site"));
        form.draft();
        List<Problem> wrong = form.atFields(problems);
        return shown(asked, Optional.empty(), new TypedFields(asked.fields(), wrong), wrong);
    }

    private static LocalDate today(Asked asked) {
        return asked.reader().today();
    }

    private static Answer shown(Asked asked, Optional<VisitPrice> price, TypedFields typed,
            List<Problem> hindrances) {
        return Answer.of(AskingOffice.of(asked.book()).choices(asked.part("site"), today(asked),
                asked.reader().language()),
                choices -> new Answer.Shown("repair-entry", new Shown(choices, price, hindrances, typed), choices));
    }
}
