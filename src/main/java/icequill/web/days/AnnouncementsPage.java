package icequill.web.days;

import icequill.answer.days.AnnouncementSheet;
import icequill.life.telling.Telling;
import icequill.office.days.AnnouncementOffice;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Planned visits, and whether customers were told of them; notes that one was. */
public final class AnnouncementsPage implements Page, FormPage {

    private static final String VISIT = "visit";

    /**
     * What its page shows.
     *
     * @param sheet empty where what is asked for cannot be read
     */
    public record Shown(Optional<AnnouncementSheet> sheet, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, List.of());
    }

    private static Answer page(Asked asked, List<Problem> wrong) {
        Optional<Language> language = Optional.of(asked.reader().language());
        AnnouncementOffice office = AnnouncementOffice.of(asked.book());
        Problems problems = new Problems();
        LocalDate from = asked.day("from", problems).orElse(asked.reader().today());
        LocalDate until = asked.day("until", problems).orElse(AnnouncementOffice.usualUntil(from));
        Validated<AnnouncementSheet> sheet = problems.or(() -> from).then(valid -> asked.text(VISIT)
                .map(visit -> office.named(List.of(visit), language))
                .orElseGet(() -> office.between(from, until, language)));
        return Answer.Shown.orProblems("announcements", new Shown(sheet.found(), new TypedFields(asked.fields(),
                wrong.isEmpty() ? sheet.problems() : wrong)), sheet.map(AnnouncementSheet::data));
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        LocalDate day = asked.day("on", problems).orElse(asked.reader().today());
        String typed = asked.text("way").orElse("").toUpperCase(Locale.ROOT);
        Optional<Telling.Way> way = Arrays.stream(Telling.Way.values()).filter(one -> one.name().equals(typed))
                .findFirst();
        String visit = asked.text(VISIT).orElse("");
        if (way.isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "way"), "it is not said how the customer was told",
                    "paper, telephone or mail");
        }
        return problems.or(way::orElseThrow).then(how -> AnnouncementOffice.of(asked.book()).told(List.of(visit), how,
                day, Optional.empty())).map(told -> "/visits/" + visit);
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, problems);
    }
}
