package icequill.office;

import icequill.agreement.NoticePlan;
import icequill.agreement.SentNotice;
import icequill.agreement.ServedNotice;
import icequill.answer.register.RenewalList.Sent;
import icequill.answer.register.RenewalList.Todo;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which notices of a renewal count, and what is to be done next.
 *
 * @param today no earlier day is proposed
 */
record RenewalEvidence(NoticePlan plan, List<ServedNotice> notices, LocalDate today) {

    static RenewalEvidence of(NoticePlan plan, List<SentNotice> sent, LocalDate today) {
        return new RenewalEvidence(plan,
                sent.stream().map(notice -> ServedNotice.of(notice, plan.terms(), plan.rules())).toList(), today);
    }

    Todo next() {
        boolean isServed = notices.stream().anyMatch(ServedNotice::counts);
        if (!isServed && !plan.rules().isEmpty()) {
            return plan.window().filter(days -> !days.last().isBefore(today))
                    .map(days -> days.first().isAfter(today) ? Todo.WAIT : Todo.SEND).orElse(Todo.TOO_LATE);
        }
        if (today.isAfter(plan.terms().lastDayToRefuse())) {
            return Todo.RENEW;
        }
        boolean hasArrived = notices.stream().filter(ServedNotice::counts)
                .anyMatch(notice -> notice.notice().received().isPresent());
        return hasArrived ? Todo.SERVED : isServed ? Todo.ASK_WHETHER_IT_ARRIVED : Todo.NOTHING;
    }

    /** Why no day is proposed, and what else must be known; that somebody who knows the law decides is said once for all. */
    List<String> why(Sentences sentences) {
        Stream<Phrase> over = plan.window().filter(days -> days.last().isBefore(today)).stream()
                .map(days -> Phrase.of("renewal.window-over", new Fact.Day(days.first()), new Fact.Day(days.last())));
        return Stream.concat(over, plan.remarks().stream())
                .filter(remark -> !remark.key().equals("remark.notice-adviser")).map(sentences::say).toList();
    }

    List<Sent> sent(Sentences sentences) {
        return notices.stream().map(notice -> new Sent(notice.notice().sent(), notice.notice().way(),
                notice.notice().paper(), notice.notice().tracking(), notice.notice().received(), notice.counts(),
                notice.why().stream().map(sentences::say).toList())).toList();
    }
}
