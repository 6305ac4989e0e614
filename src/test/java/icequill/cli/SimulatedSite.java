package icequill.cli;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A site of the simulated year with two machines, of which its agreement is for one at first, from the first of June 2026.
 *
 * @param months from one payment to the next; empty where each visit is paid when it is done
 * @param gap months from one visit to the next
 */
record SimulatedSite(int number, String tier, int gap, Optional<Integer> months, int cents) {

    static final LocalDate START = LocalDate.of(2026, 6, 1);
    private static final int QUARTER = 3;
    private static final int STEP = 500;

    static SimulatedSite of(int number, Random random) {
        boolean isQuarterly = random.nextBoolean();
        List<Optional<Integer>> ways = List.of(Optional.of(1), Optional.of(3), Optional.of(12), Optional.empty());
        return new SimulatedSite(number, isQuarterly ? "quarterly" : "semiannual", isQuarterly ? QUARTER : 2 * QUARTER,
                ways.get(random.nextInt(ways.size())), STEP * (120 + random.nextInt(200)));
    }

    String id() {
        return "site-" + number;
    }

    String name() {
        return "Simulated Kitchen " + number;
    }

    String agreement() {
        return "S-" + number;
    }

    /** Percent that its plan takes off planned visits. */
    int discount() {
        return gap == QUARTER ? 10 : 5;
    }

    String spare() {
        return "spare-" + number;
    }

    /** Its customer, site and agreement as forms. */
    String forms() {
        List<String> payments = new ArrayList<>(List.of("monthly", "quarterly", "yearly"));
        String billing = months.map(every -> payments.get(List.of(1, 3, 12).indexOf(every))).orElse("per-visit");
        return """
                format: 1
                form: site
                id: %1$s
                customer:
                  name: Simulated Kitchen %2$d
                  billTo:
                    - name: Simulated Kitchen %2$d
                      address: {street: ["%2$d Sample Road"], city: Alderton, region: NY, postalCode: "10999", country: US}
                name: Simulated Kitchen %2$d
                address: {street: ["%2$d Sample Road"], city: Alderton, region: NY, postalCode: "10999", country: US}
                kind: restaurant
                miles: 12
                taxPlace: alder-county
                machines:
                  - id: cuber-%2$d
                    model: Cuber 500
                    where: kitchen
                    make: batch
                    form: self-contained
                    cooling: air
                    evaporator: {position: vertical, plating: nickel}
                    harvestRate: 500
                    serial: SIM-%2$d
                    installed: 2023-04-10
                    connection: cord-and-plug
                    storage: bin
                    groundLevel: true
                  - id: spare-%2$d
                    model: Cuber 500
                    where: bar
                    make: batch
                    form: self-contained
                    cooling: air
                    evaporator: {position: vertical, plating: nickel}
                    harvestRate: 500
                    serial: SIS-%2$d
                    installed: 2023-04-10
                    connection: cord-and-plug
                    storage: bin
                    groundLevel: true
                ---
                format: 1
                form: agreement
                id: agreement-%2$d
                number: %3$s
                site: %1$s
                machines: [cuber-%2$d]
                tier: %4$s
                priced: 2026-05-14
                accepted: {date: 2026-05-20, paper: signed quote}
                agreed: {price: %5$s, from: signed quote}
                start: 2026-06-01
                months: 12
                billing: %6$s
                cancelDays: 30
                renewal:
                  months: 12
                  refuseDays: 60
                  jurisdictions: [US-NY]
                  raise: {percent: 3}
                """
                .formatted(id(), number, agreement(), tier, BigDecimal.valueOf(cents, 2), billing);
    }

    /** A visit to it as a form. */
    String visit(String id, LocalDate day, Optional<String> call) {
        return """
                format: 1
                form: visit
                id: %1$s
                site: %2$s
                %3$s
                people:
                  - {name: Technician %6$d, grade: lead, arrived: %4$sT09:00, left: %4$sT10:30, on: %5$s}
                machines:
                  - machine: cuber-%6$d
                    tasks: [{task: brush-condenser%7$s}]
                """.formatted(id, id(),
                call.map(known -> "asked: {call: " + known + ", by: Bram, at: " + day.minusDays(1)
                        + "T10:00, symptom: No ice.}").orElse("serviceCall: included"),
                day, call.isPresent() ? "repair" : "cleaning, outcome: included", number,
                call.isPresent() ? "" : ", outcome: included");
    }
}
