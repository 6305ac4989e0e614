package icequill.web.agreement;

import icequill.explain.ConstantKey;
import icequill.life.agreement.NoticeWay;
import icequill.problem.Problems;
import icequill.web.page.Asked;
import icequill.web.page.TypedChoice;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is typed of how somebody said that an agreement is to end. */
record NoticeForm(Asked asked, Problems problems) {

    static final List<String> WAYS = Stream.of(NoticeWay.values()).map(ConstantKey::of).toList();

    LocalDate day() {
        return day("day").orElse(asked.reader().today());
    }

    Optional<LocalDate> day(String field) {
        return asked.day(field, problems);
    }

    Optional<NoticeWay> way() {
        return problems.take(TypedChoice.of(asked, "way", List.of(NoticeWay.values()), ConstantKey::of));
    }

    /** How many steps the page that was sent has shown. */
    Optional<Integer> seen() {
        return asked.text("seen").filter(text -> text.matches("[0-9]{1,6}")).map(Integer::valueOf);
    }
}
