package icequill.web.agreement;

import icequill.agreement.NoticeRule.Delivery;
import icequill.agreement.SentNotice;
import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.register.RenewalList;
import icequill.explain.ConstantKey;
import icequill.life.agreement.AgreementEvent;
import icequill.life.agreement.AgreementEvent.Arrived;
import icequill.life.agreement.AgreementEvent.Told;
import icequill.office.RenewalOffice;
import icequill.office.agreement.RenewalWish;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedChoice;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The renewal of an agreement: which notices were sent, whether they count, and what it goes on as. */
public final class RenewalPage implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param renewal empty where it does not renew itself
     */
    public record Shown(AgreementAnswer agreement, Optional<RenewalList.Row> renewal, List<String> ways,
            TypedFields typed) {
        public Shown {
            ways = List.copyOf(ways);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        LocalDate day = form.day();
        String number = asked.part("number");
        return switch (asked.text("what").orElse("")) {
        case "sent" -> told(asked, day, problems).then(event -> AgreementPage.office(asked).note(number, event,
                form.seen())).map(sheet -> path(number));
        case "arrived" -> problems.or(() -> new Arrived(day)).then(event -> AgreementPage.office(asked).note(number,
                event, form.seen())).map(sheet -> path(number));
        case "renew" -> problems.or(() -> new RenewalWish(day, asked.text("agreed"), form.seen()))
                .then(wish -> AgreementPage.office(asked).renew(number, wish))
                .map(sheet -> Paths.agreement(sheet.data().agreement()));
        default -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", ""));
        };
    }

    private static Validated<AgreementEvent> told(Asked asked, LocalDate day, Problems problems) {
        Optional<Delivery> way = problems
                .take(TypedChoice.of(asked, "way", List.of(Delivery.values()), ConstantKey::of));
        return problems.or(() -> new Told(new SentNotice(day, way.orElseThrow(), asked.text("paper"),
                asked.text("tracking"), Optional.empty(), asked.text("who"))));
    }

    private static String path(String number) {
        return Paths.agreement(number) + "/renewal";
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        String number = asked.part("number");
        return Answer.of(AgreementPage.office(asked).show(number), sheet -> Answer.of(
                RenewalOffice.of(asked.book(), Optional.of(asked.reader().language())).of(number,
                        asked.reader().today()),
                list -> new Answer.Shown("agreement-renewal", new Shown(sheet.data(),
                        list.renewals().stream().findFirst(),
                        Stream.of(Delivery.values()).map(ConstantKey::of).toList(),
                        new TypedFields(asked.fields(), problems)), list)));
    }
}
