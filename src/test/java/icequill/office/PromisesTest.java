package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.PriceSheet;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.shop.FormName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an agreement promises, at the visits that it reaches; the agreements are the demo's, from 1 June 2026 on. */
class PromisesTest {

    private static final String CALL = """
            format: 1
            site: crumb-lane-bakery
            serviceCall: charged
            people:
              - {name: Ada Quill, grade: lead, arrived: 2026-06-03T09:00, left: 2026-06-03T10:30, on: repair}
            machines:
              - machine: proof-room
                complaint: Makes no ice.
            lines:
              - {material: float-switch, amount: 1, machine: proof-room}
            """;

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** Worked by hand: 90 minutes at 98.00 are 147.00, less 10 %; the switch's 55.35 less 5 % of 2.77; the call is nobody's. */
    @Test
    void price_agreementInForce_itsDiscountsAreApplied() throws IOException {
        assertThat(nets(CALL)).containsExactly("52.00", "132.30", "52.58");
        assertThat(price(CALL).explanations(false)).anyMatch(text -> text.contains("agreement A-2026-004, 10% off"));
    }

    @ParameterizedTest
    @CsvSource({"2026-05-29", "2027-06-01"})
    void price_outsideTheTerm_nothingOff(String day) throws IOException {
        assertThat(nets(CALL.replace("2026-06-03", day))).containsExactly("52.00", "147.00", "55.35");
    }

    @Test
    void price_agreementNotAccepted_nothingOff() throws IOException {
        Path file = folder.resolve("agreements/crumb-lane-bakery.yaml");
        Files.writeString(file, Files.readString(file).replaceFirst("(?m)^accepted:.*\n(?: .*\n)*", ""));

        assertThat(nets(CALL)).containsExactly("52.00", "147.00", "55.35");
        assertThat(problems(CALL.replace("serviceCall: charged", "serviceCall: included"))).singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo(Code.NOT_ALLOWED);
                    assertThat(problem.text()).contains("included, but no accepted agreement for site",
                            "crumb-lane-bakery", "2026-06-03");
                });
    }

    @Test
    void price_visitWithADiscountOfItsOwn_saysThatTheAgreementWasNotApplied() throws IOException {
        String own = CALL + "classDiscount: agreement-labor\n";

        assertThat(nets(own)).containsExactly("52.00", "132.30", "55.35");
        assertThat(price(own).notices()).singleElement().satisfies(
                notice -> assertThat(notice.text()).contains("A-2026-004 was not applied", "agreement-labor"));
    }

    /** A cleaning on the day on which the plan has one due, charged again, is noticed; called included, it is not. */
    @Test
    void price_plannedWorkCharged_saysSo() throws IOException {
        String cleaning = CALL.replace("on: repair", "on: cleaning").replace("complaint: Makes no ice.",
                "tasks: [{task: flush}]");

        assertThat(price(cleaning).notices()).singleElement().satisfies(notice -> assertThat(notice.text())
                .contains("A-2026-004 has a visit due on 2026-06-01", "outcome: included"));
        assertThat(price(cleaning.replace("{task: flush}", "{task: flush, outcome: included}")).notices()).isEmpty();
    }

    /** The hotel's agreement is for three of six machines, and a fourth from 15 August on. */
    @ParameterizedTest
    @CsvSource({"2026-08-14, pool-bar, false", "2026-08-15, pool-bar, true", "2026-08-14, banquet, false",
            "2026-08-14, floor-3, true"})
    void price_includedAtAMachine_onlyWhereTheAgreementIsForIt(String day, String machine, boolean included)
            throws IOException {
        String visit = CALL.replace("crumb-lane-bakery", "hotel-fernhill").replace("proof-room", machine)
                .replace("2026-06-03", day).replace("complaint: Makes no ice.",
                        "tasks: [{task: flush, outcome: included}]");

        List<Problem> problems = problems(visit);

        assertThat(problems.isEmpty()).isEqualTo(included);
        assertThat(problems).allMatch(problem -> problem.text().contains("A-2026-002 is not for this machine"));
    }

    /** Two agreements, each for machines of its own: that of the machine is meant; for both, neither is applied, and it is said. */
    @Test
    void price_severalAgreements_theOneOfTheMachine() throws IOException {
        Path hotel = folder.resolve("agreements/hotel-fernhill.yaml");
        Files.writeString(folder.resolve("agreements/hotel-kitchens.yaml"), Files.readString(hotel)
                .replace("A-2026-002", "A-2026-009").replace("[lobby-bar, floor-3, floor-6]", "[main-kitchen, banquet]")
                .replaceFirst("(?s)changes:.*", ""));
        String visit = CALL.replace("crumb-lane-bakery", "hotel-fernhill");

        assertThat(price(visit.replace("proof-room", "banquet")).explanations(false))
                .anyMatch(text -> text.contains("agreement A-2026-009, 10% off"));
        assertThat(price(visit.replaceFirst("(?s)machines:.*", "")).notices()).singleElement().satisfies(
                notice -> assertThat(notice.text()).contains("A-2026-002, A-2026-009 run at the site"));
    }

    private PriceSheet price(String visit) throws IOException {
        return DemoShop.office(folder).price(FormName.file(write(visit)), Optional.empty()).orElseThrow();
    }

    private List<Problem> problems(String visit) throws IOException {
        return DemoShop.office(folder).price(FormName.file(write(visit)), Optional.empty()).problems();
    }

    private List<String> nets(String visit) throws IOException {
        return price(visit).rows(false).stream().map(List::getLast).toList();
    }

    private Path write(String visit) throws IOException {
        return Files.writeString(folder.resolve("visits/call.yaml"), visit);
    }
}
