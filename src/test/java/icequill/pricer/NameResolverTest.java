package icequill.pricer;

import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NameResolverTest {

    @Test
    void price_manyUnknownNames_allReportedWithLineAndNearestName() {
        VisitBuilder builder = visit().person("leed", morning(Outcome.CHARGED)).material("decaler", "4")
                .modifier("stares", "1").task("head", "descal", Outcome.CHARGED).surcharge("handeling")
                .classDiscount("ten-of").documentDiscount("ten-dolars")
                .material("filter", "1", Outcome.CHARGED, Optional.of("hed"));

        List<Problem> problems = problems(builder);

        assertThat(problems).extracting(Problem::code).containsOnly(Code.UNKNOWN_NAME);
        assertThat(problems).extracting(problem -> problem.place().line() + " " + problem.message())
                .containsExactlyInAnyOrder("1 there is no grade \"leed\"", "2 there is no material \"decaler\"",
                        "3 there is no modifier \"stares\"", "4 there is no task \"descal\"",
                        "6 there is no surcharge \"handeling\"", "7 there is no class discount \"ten-of\"",
                        "8 there is no document discount \"ten-dolars\"",
                        "9 there is no machine \"hed\"");
        assertThat(problems).extracting(Problem::allowed).allMatch(allowed -> allowed.startsWith("did you mean"));
    }

    @Test
    void price_taskForAnotherKindOfMachine_refused() {
        List<Problem> problems = problems(morningVisit().task("flaker", "descale", Outcome.CHARGED));

        assertThat(problems).extracting(Problem::code).containsExactly(Code.NOT_ALLOWED);
    }

    @Test
    void price_machineBeyondTheDoseTable_refusedWithWhereToAddAStep() {
        VisitBuilder builder = morningVisit().task("head", "descale", Outcome.CHARGED);

        List<Problem> problems = Pricer.price(builder.build(), RatesFixture.siteWithLargeHead(), rates())
                .problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.OUT_OF_RANGE);
    }

    @Test
    void price_warrantyPartAfterItsEnd_refused() {
        // the fixture's parts warranty runs to 2027, its labor warranty ended in 2025
        assertThat(problems(morningVisit().material("valve", "1", Outcome.WARRANTY, Optional.of("head")))).isEmpty();
        assertThat(problems(morningVisit().material("valve", "1", Outcome.WARRANTY, Optional.of("flaker"))))
                .extracting(Problem::message).containsExactly("the warranty of machine \"flaker\" is not on record");
        assertThat(problems(morningVisit().modifier("stairs", "1", Outcome.WARRANTY, "head")))
                .extracting(Problem::message)
                .containsExactly("the warranty of machine \"head\" ended on 2025-01-01");
    }

    @Test
    void price_timeOrServiceCallMarkedDeclined_refused() {
        VisitBuilder builder = visit().person("lead", morning(Outcome.DECLINED)).serviceCall(Outcome.DECLINED);

        assertThat(problems(builder)).extracting(Problem::code).containsExactly(Code.NOT_ALLOWED, Code.NOT_ALLOWED);
    }

    @Test
    void price_samePersonTwiceAtATime_refusedWhereTheSecondStands() {
        VisitBuilder builder = visit().stay("Ada Quill", "lead", morning(Outcome.CHARGED)).stay("ada  quill ", "helper",
                spell("2026-05-13T10:05", "2026-05-13T10:30", ChargeClass.CLEANING, Outcome.CHARGED));

        assertThat(problems(builder)).extracting(problem -> problem.code() + " " + problem.place().line())
                .containsExactly("OVERLAP 2", "NOT_ALLOWED 2");
        assertThat(problems(builder)).extracting(Problem::message).first().asString()
                .contains("is here twice at the same time: from 2026-05-13T10:00 to 2026-05-13T11:00");
    }

    private static VisitBuilder morningVisit() {
        return visit().person("lead", morning(Outcome.CHARGED));
    }

    private static Attendance.Spell morning(Outcome outcome) {
        return spell("2026-05-13T10:00", "2026-05-13T11:00", ChargeClass.CLEANING, outcome);
    }

    private static List<Problem> problems(VisitBuilder builder) {
        return Pricer.price(builder.build(), site(), rates()).problems();
    }
}
