package icequill.life.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.agreement.GoingOn;
import icequill.agreement.NoticeRule.Delivery;
import icequill.agreement.RenewalTerms;
import icequill.agreement.SentNotice;
import icequill.agreement.Term;
import icequill.life.agreement.AgreementEvent.Arrived;
import icequill.life.agreement.AgreementEvent.Begun;
import icequill.life.agreement.AgreementEvent.Changed;
import icequill.life.agreement.AgreementEvent.Notice;
import icequill.life.agreement.AgreementEvent.Ordered;
import icequill.life.agreement.AgreementEvent.Refusal;
import icequill.life.agreement.AgreementEvent.Renewal;
import icequill.life.agreement.AgreementEvent.SiteIn;
import icequill.life.agreement.AgreementEvent.SiteOut;
import icequill.life.agreement.AgreementEvent.TakenOver;
import icequill.life.agreement.AgreementEvent.Told;
import icequill.life.agreement.AgreementEvent.Transfer;
import icequill.life.agreement.AgreementState.InForce;
import icequill.life.agreement.AgreementState.Noticed;
import icequill.life.agreement.AgreementState.Refused;
import icequill.life.agreement.AgreementState.Renewed;
import icequill.life.agreement.AgreementState.Transferred;
import icequill.life.agreement.AgreementTerms.AtSite;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What may follow what, for a year from 1 June 2026 that is ended by 30 days of notice and refused 60 days before its end. */
class AgreementStateTest {

    private static final Term YEAR = new Term(LocalDate.of(2026, 6, 1), 12);
    private static final AgreementTerms BY_TERM = new AgreementTerms(new RenewalTerms(YEAR, 60, 12, GoingOn.BY_TERM),
            YEAR.start(), 30, true, Map.of("depot", at("2026-10-01", "", ""), "main-street", at("", "", ""), "pier",
                    at("", "2026-09-01", "2026-12-31")));
    private static final AgreementTerms BY_MONTH = new AgreementTerms(new RenewalTerms(YEAR, 60, 1, GoingOn.BY_MONTH),
            YEAR.start(), 30, true, Map.of());
    private static final AgreementTerms ALONE = new AgreementTerms(BY_TERM.renewal(), YEAR.start(), 30, false,
            Map.of("depot", at("", "", "")));
    private static final AgreementTerms FOLLOWED = new AgreementTerms(BY_TERM.renewal(), YEAR.start(), 30, true,
            Map.of("depot", at("", "", ""), "pier", at("", "2026-09-01", "")));
    private static final InForce RUNNING = new InForce(List.of());
    private static final Notice NOTICE = notice("2026-12-01", "2026-12-31");
    private static final Transfer SALE = transfer("2026-11-10");
    private static final Refusal REFUSAL = refusal("2027-04-01");

    private static final SentNotice SENT = new SentNotice(LocalDate.of(2027, 3, 8), Delivery.CERTIFIED_MAIL,
            Optional.empty(), Optional.of("9407"), Optional.empty(), Optional.of("Ada"));
    private static final InForce TOLD = new InForce(List.of(SENT));
    private static final Renewal RENEWAL = new Renewal(LocalDate.of(2027, 4, 2), "A-2027-001", Optional.empty());

    /** A state, what happens, and where it stands then; or the sentence of why it cannot. */
    record Row(AgreementTerms terms, AgreementState from, AgreementEvent event, Object to) {}

    /** By hand: 60 days before 1 June 2027 the last day to refuse is 1 April; a month's end that leaves 60 days after 15 April is 30 June. */
    static Stream<Row> table() {
        return Stream.of(row(RUNNING, NOTICE, new Noticed(NOTICE)),
                row(RUNNING, notice("2026-12-01", "2027-02-28"), new Noticed(notice("2026-12-01", "2027-02-28"))),
                row(RUNNING, REFUSAL, new Refused(REFUSAL)),
                row(new Refused(REFUSAL), notice("2027-04-10", "2027-05-10"),
                        new Noticed(notice("2027-04-10", "2027-05-10"))),
                row(RUNNING, notice("2026-12-01", "2026-12-30"),
                        "lastDay: 2026-12-30 is too early for a notice of 2026-12-01 (2026-12-31 or a later day)"),
                row(RUNNING, notice("2027-05-15", "2027-06-14"),
                        "lastDay: it would end on 2027-06-14, but its term does on 2027-05-31 (that it is not to go on"
                                + " after its term: a refusal)"),
                row(RUNNING, notice("2026-04-01", "2026-05-01"),
                        "lastDay: it begins on 2026-06-01 (that day or a later one)"),
                row(RUNNING, refusal("2027-04-02"), "day: the last day to refuse was 2027-04-01 (a day up to that;"
                        + " after it, the notice that ends what it goes on by)"),
                row(RUNNING, new Told(SENT), TOLD),
                row(TOLD, new Arrived(LocalDate.of(2027, 3, 10)),
                        new InForce(List.of(SENT.arrived(LocalDate.of(2027, 3, 10))))),
                row(TOLD, new Arrived(LocalDate.of(2027, 3, 7)), "day: it arrived on 2027-03-07, but was sent on"
                        + " 2027-03-08 (that day or a later one)"),
                row(RUNNING, new Arrived(LocalDate.of(2027, 3, 10)), "no notice of its renewal was sent yet"),
                row(new InForce(List.of(SENT.arrived(LocalDate.of(2027, 3, 10)))),
                        new Arrived(LocalDate.of(2027, 3, 11)), "that the last notice arrived is known already"),
                row(RUNNING, new Told(new SentNotice(LocalDate.of(2027, 6, 1), Delivery.MAIL, Optional.empty(),
                        Optional.empty(), Optional.empty(), Optional.empty())),
                        "day: what it would go on as begins on 2027-06-01 (a day before that)"),
                row(TOLD, RENEWAL, new Renewed(List.of(SENT), RENEWAL)),
                row(new Renewed(List.of(), RENEWAL), RENEWAL, "it goes on as A-2027-001 already"),
                row(new Renewed(List.of(), RENEWAL), REFUSAL, "it goes on as A-2027-001 already"),
                row(new Renewed(List.of(), RENEWAL), NOTICE, new Noticed(NOTICE)),
                new Row(BY_MONTH, RUNNING, RENEWAL, "it goes on by the month, by itself"),
                row(RUNNING, new Begun(LocalDate.of(2026, 5, 20), "A-2025-001"), RUNNING),
                row(new Noticed(NOTICE), NOTICE,
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(new Noticed(NOTICE), REFUSAL,
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(new Refused(REFUSAL), REFUSAL, "that it goes on was refused on 2027-04-01 already"),
                row(RUNNING, added("2026-10-01", "main-street"), RUNNING),
                row(TOLD, added("2027-05-31", "depot"), TOLD),
                row(new Refused(REFUSAL), added("2027-05-01", "depot"), new Refused(REFUSAL)),
                row(RUNNING, added("2026-06-01", "depot"), "from: 2026-06-01 is not within the term after its first day"
                        + " (a day from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, added("2027-06-01", "depot"), "from: 2027-06-01 is not within the term after its first day"
                        + " (a day from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, added("2026-10-01", "depot"), "from: 2026-10-01 does not come after the change of"
                        + " 2026-10-01, by which prices are known (a day from 2026-10-02 to 2027-05-31)"),
                row(RUNNING, changed("2026-11-01", "depot", List.of()), "add: no machine comes in or goes out (one"
                        + " that does)"),
                row(new Renewed(List.of(), RENEWAL), added("2027-05-01", "depot"), "it goes on as A-2027-001 already"),
                row(new Noticed(NOTICE), added("2026-12-15", "depot"),
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(RUNNING, comes("2026-06-02", "mall"), RUNNING), row(TOLD, comes("2027-05-31", "mall"), TOLD),
                row(new Refused(REFUSAL), comes("2027-05-01", "mall"), new Refused(REFUSAL)),
                row(RUNNING, comes("2026-06-01", "mall"), "from: 2026-06-01 is not within the term after its first day"
                        + " (a day from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, comes("2027-06-01", "mall"), "from: 2027-06-01 is not within the term after its first day"
                        + " (a day from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, comes("2026-11-01", "depot"), "site: depot is a site of this agreement already (another"
                        + " site, or another agreement for it)"),
                row(RUNNING, comes("2027-02-01", "pier"), "site: pier goes out on 2027-01-01, and comes in once at most"
                        + " (another site, or another agreement for it)"),
                new Row(ALONE, RUNNING, comes("2026-11-01", "mall"), "site: what is paid visit by visit, or by open"
                        + " months, is for one site (an agreement of its own for mall)"),
                row(new Renewed(List.of(), RENEWAL), comes("2027-05-01", "mall"), "it goes on as A-2027-001 already"),
                row(new Noticed(NOTICE), comes("2026-12-15", "mall"),
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(new Transferred(SALE), comes("2026-12-01", "mall"),
                        "it went over to A-2026-009 on 2026-11-10 already"),
                row(RUNNING, goes("2026-10-02", "depot"), RUNNING), row(TOLD, goes("2027-05-31", "main-street"), TOLD),
                row(new Refused(REFUSAL), goes("2027-05-01", "depot"), new Refused(REFUSAL)),
                row(RUNNING, goes("2026-10-01", "depot"), "from: 2026-10-01 does not come after the change of"
                        + " 2026-10-01, by which prices are known (a day from 2026-10-02 to 2027-05-31)"),
                row(RUNNING, goes("2026-06-01", "main-street"), "from: 2026-06-01 is not within the term after its"
                        + " first day (a day from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, goes("2026-11-01", "pier"), "site: pier goes out on 2027-01-01 already (a site that"
                        + " stays)"),
                new Row(ALONE, RUNNING, goes("2026-11-01", "depot"), "site: no other site is part of it from"
                        + " 2026-11-01 to its end (the end of the agreement: icequill agreement end)"),
                new Row(FOLLOWED, RUNNING, goes("2026-08-31", "depot"), "site: no other site is part of it from"
                        + " 2026-08-31 to its end (the end of the agreement: icequill agreement end)"),
                new Row(FOLLOWED, RUNNING, goes("2026-09-01", "depot"), RUNNING),
                new Row(FOLLOWED, RUNNING, goes("2026-09-01", "pier"), "from: 2026-09-01 does not come after the change"
                        + " of 2026-09-01, by which prices are known (a day from 2026-09-02 to 2027-05-31)"),
                row(new Renewed(List.of(), RENEWAL), goes("2027-05-01", "depot"), "it goes on as A-2027-001 already"),
                row(new Noticed(NOTICE), goes("2026-12-15", "depot"),
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(RUNNING, ordered("2026-06-01", "PO-7"), RUNNING),
                row(new Noticed(NOTICE), ordered("2026-12-15", "PO-7"), new Noticed(NOTICE)),
                row(new Renewed(List.of(), RENEWAL), ordered("2026-12-15", "PO-7"), new Renewed(List.of(), RENEWAL)),
                row(RUNNING, ordered("2026-05-31", "PO-7"),
                        "from: it begins on 2026-06-01 (that day or a later one)"),
                row(RUNNING, ordered("2026-06-01", " "), "order: a purchase order has 1 to 60 letters and digits (its"
                        + " number, or none at all)"),
                row(RUNNING, SALE, new Transferred(SALE)),
                row(TOLD, transfer("2027-05-31"), new Transferred(transfer("2027-05-31"))),
                row(RUNNING, transfer("2026-06-01"),
                        "from: 2026-06-01 is not within the term after its first day (a day"
                                + " from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, transfer("2027-06-01"),
                        "from: 2027-06-01 is not within the term after its first day (a day"
                                + " from 2026-06-02 to 2027-05-31)"),
                row(RUNNING, transfer("2026-10-01"), "from: 2026-10-01 does not come after the change of 2026-10-01, by"
                        + " which prices are known (a day from 2026-10-02 to 2027-05-31)"),
                row(new Noticed(NOTICE), SALE,
                        "notice was given on 2026-12-01 already: the agreement ends on 2026-12-31"),
                row(new Refused(REFUSAL), SALE, "that it goes on was refused on 2027-04-01 already"),
                row(new Renewed(List.of(), RENEWAL), SALE, "it goes on as A-2027-001 already"),
                row(new Transferred(SALE), SALE, "it went over to A-2026-009 on 2026-11-10 already"),
                row(new Transferred(SALE), NOTICE, "it went over to A-2026-009 on 2026-11-10 already"),
                row(new Transferred(SALE), added("2026-12-01", "depot"),
                        "it went over to A-2026-009 on 2026-11-10 already"),
                row(new Transferred(SALE), ordered("2026-12-15", "PO-7"), new Transferred(SALE)),
                row(RUNNING, new TakenOver(LocalDate.of(2026, 11, 10), "A-2026-001"), RUNNING),
                new Row(BY_MONTH, RUNNING, notice("2027-04-15", "2027-05-15"),
                        new Noticed(notice("2027-04-15", "2027-05-15"))),
                new Row(BY_MONTH, RUNNING, notice("2027-05-15", "2027-07-31"),
                        new Noticed(notice("2027-05-15", "2027-07-31"))),
                new Row(BY_MONTH, RUNNING, notice("2027-05-15", "2027-08-15"),
                        "lastDay: after its term it ends with one of its months (the end of one: 2027-07-31, or of a"
                                + " later one)"));
    }

    private static Row row(AgreementState from, AgreementEvent event, Object to) {
        return new Row(BY_TERM, from, event, to);
    }

    private static Notice notice(String received, String last) {
        return new Notice(LocalDate.parse(received), LocalDate.parse(last), NoticeBy.CUSTOMER, NoticeWay.MAIL,
                Optional.of("J. Baker"), Optional.empty());
    }

    private static Transfer transfer(String from) {
        return new Transfer(LocalDate.of(2026, 11, 12), LocalDate.parse(from), "A-2026-009", Optional.of("J. Baker"),
                Optional.empty());
    }

    private static Changed added(String from, String site) {
        return changed(from, site, List.of("pool-bar"));
    }

    private static Changed changed(String from, String site, List<String> added) {
        return new Changed(LocalDate.of(2026, 9, 20), LocalDate.parse(from), site, added, List.of(),
                Optional.of("J. Baker"), Optional.empty());
    }

    private static SiteIn comes(String from, String site) {
        return new SiteIn(LocalDate.of(2026, 9, 20), LocalDate.parse(from), site, List.of(), Optional.of("J. Baker"),
                Optional.empty());
    }

    private static SiteOut goes(String from, String site) {
        return new SiteOut(LocalDate.of(2026, 9, 20), LocalDate.parse(from), site, Optional.of("J. Baker"),
                Optional.empty());
    }

    /** A site with the days of its latest change, its first and its last; blank where there is none. */
    private static AtSite at(String changed, String from, String until) {
        return new AtSite(day(changed), day(from), day(until));
    }

    private static Optional<LocalDate> day(String text) {
        return Optional.of(text).filter(known -> !known.isEmpty()).map(LocalDate::parse);
    }

    private static Ordered ordered(String from, String number) {
        return new Ordered(LocalDate.of(2026, 9, 20), LocalDate.parse(from), Optional.of(number), Optional.empty());
    }

    private static Refusal refusal(String day) {
        return new Refusal(LocalDate.parse(day), NoticeWay.CERTIFIED_MAIL, Optional.empty(), Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("table")
    void eachStep_leadsWhereTheTableSays(Row row) {
        Validated<AgreementState> after = AgreementState.step(row.from(), row.event(), row.terms());

        assertThat(after.found().<Object>map(state -> state)
                .orElseGet(() -> after.problems().stream().map(Problem::text).findFirst().orElseThrow()))
                .isEqualTo(row.to());
    }

    @ParameterizedTest
    @CsvSource({"2026-05-31, TO_COME, TO_COME, TO_COME", "2026-06-01, IN_FORCE, NOTICE_GIVEN, IN_FORCE",
            "2026-11-09, IN_FORCE, NOTICE_GIVEN, IN_FORCE", "2026-11-10, IN_FORCE, NOTICE_GIVEN, ENDED_BY_TRANSFER",
            "2026-12-31, IN_FORCE, NOTICE_GIVEN, ENDED_BY_TRANSFER",
            "2027-01-01, IN_FORCE, ENDED_BY_NOTICE, ENDED_BY_TRANSFER",
            "2027-05-31, IN_FORCE, ENDED_BY_NOTICE, ENDED_BY_TRANSFER",
            "2027-06-01, ENDED_BY_TERM, ENDED_BY_NOTICE, ENDED_BY_TRANSFER"})
    void stage_isToldByItsLastDay(LocalDate day, AgreementStage running, AgreementStage noticed,
            AgreementStage transferred) {
        assertThat(new Transferred(SALE).on(day, BY_TERM)).isEqualTo(transferred);
        assertThat(RUNNING.on(day, BY_TERM)).isEqualTo(running);
        assertThat(new Noticed(NOTICE).on(day, BY_TERM)).isEqualTo(noticed);
    }

    /** What goes on by the month does not end by itself; a refused one ends with its term. */
    @ParameterizedTest
    @CsvSource({"2027-05-31, NOTICE_GIVEN", "2027-06-01, ENDED_BY_REFUSAL"})
    void goingOnByTheMonth_endsOnlyWhenSomebodySaysSo(LocalDate day, AgreementStage refused) {
        assertThat(RUNNING.on(day.plusYears(9), BY_MONTH)).isEqualTo(AgreementStage.IN_FORCE);
        assertThat(RUNNING.lastDay(BY_MONTH)).isEmpty();
        assertThat(new Refused(REFUSAL).on(day, BY_MONTH)).isEqualTo(refused);
    }
}
