package icequill.shop;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of wrong input gets a problem with its place and what would be right, all of a file at once. */
@Tag("wide")
class BadInputTest {

    @TempDir
    Path shop;

    @BeforeEach
    void demoShop() {
        DemoShop.files(shop);
    }

    /** One edit of the late call's file, and the report it must give. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', textBlock = """
            format: 1                     | format: 2                            | NOT_ALLOWED    | 2  | found the number 2 (the version of this file's layout: 1)
            site: pennon-wharf-taproom   | site: pennon-wharf-taprom           | UNKNOWN_NAME   | 0  | there is no site "pennon-wharf-taprom" (did you mean "pennon-wharf-taproom"?
            site: pennon-wharf-taproom   | sites: pennon-wharf-taproom         | UNKNOWN_KEY    | 4  | there is no key "sites" here (did you mean "site"?
            site: pennon-wharf-taproom   | sight: pennon-wharf-taproom         | MISSING        | 2  | "site" is missing (a name of small letters
            grade: lead                   | # nothing                            | MISSING        | 15 | "grade" is missing (a name of small letters
            grade: lead                   | grade: [lead]                        | WRONG_TYPE     | 16 | found a list (text; put it in quotes
            purchaseOrder: CK-1188        | purchaseOrder: 1188                  | WRONG_TYPE     | 11 | found the number 1188 (text; put it in quotes
            limit: 400.00                 | limit: -1                            | OUT_OF_RANGE   | 12 | found the number -1 (an amount of the shop
            limit: 400.00                 | limit: 99999999                      | OUT_OF_RANGE   | 12 | found the number 99999999 (an amount of the shop's currency, from 0 to 1000000
            limit: 400.00                 | limit: 400.005                       | OUT_OF_RANGE   | 12 | found 400.005, finer than USD is paid (at most 2 decimals
            limit: 400.00                 | limit: 1e999999999                   | WRONG_TYPE     | 12 | found the number 1e999999999 (a number
            limit: 400.00                 | limit: .inf                          | WRONG_TYPE     | 12 | found the number .inf (a number
            left: 2026-05-13T18:05        | left: 2026-05-13T15:05               | WRONG_ORDER    | 18 | left 2026-05-13T15:05, but arrived 2026-05-13T16:20
            left: 2026-05-13T18:05        | left: 2026-05-15T18:05               | OUT_OF_RANGE   | 18 | a stay of 49 hours (at most 24 hours)
            arrived: 2026-05-13T16:20     | arrived: 2026-03-08T02:30            | NO_SUCH_TIME   | 17 | 2026-03-08T02:30 does not exist in America/New_York
            arrived: 2026-05-13T16:20     | arrived: 2026-02-30T16:20            | NOT_ALLOWED    | 17 | there is no time 2026-02-30T16:20
            arrived: 2026-05-13T16:20     | arrived: 13.5.2026 16:20             | NOT_ALLOWED    | 17 | found the text "13.5.2026 16:20" (a local date and time
            arrived: 2026-05-13T16:20     | arrived: 2026-05-13T16:20:30         | NOT_ALLOWED    | 17 | found the text "2026-05-13T16:20:30" (a local date and time to the minute
            arrived: 2026-05-13T16:20     | arrived: 2026-05-13T16:20+02:00      | NO_SUCH_TIME   | 17 | 2026-05-13T16:20 is never at offset +02:00 in America/New_York (offset -04:00
            promised: 2026-05-13T17:00    | promised: 2026-05-13T13:00           | WRONG_ORDER    | 9  | promised for 2026-05-13T13:00, but asked at 2026-05-13T14:05 (a time after the call
            at: 2026-05-13T14:05          | at: 2026-05-13T18:30                 | WRONG_ORDER    | 7  | asked at 2026-05-13T18:30, after everybody had left (a time before the visit
            accepted: true                | accepted: perhaps                    | WRONG_TYPE     | 32 | found the text "perhaps" (true or false: what the customer said)
            on: repair                    | on: repare                           | NOT_ALLOWED    | 19 | found the text "repare" (did you mean "repair"?
            """)
    void visit_oneFault_reportedWithLineAndWhatIsAllowed(String right, String wrong, Code code, int line, String text)
            throws IOException {
        Path file = edited("visits/late-call.yaml", right, wrong);

        ShopFolder folder = DemoShop.read(shop);
        DemoShop.visit(folder, file)
                .ifPresent(visit -> folder.site(visit.site(), Place.ofFile("visits/late-call.yaml")));

        assertThat(folder.problems()).as(folder.problems().toString())
                .anyMatch(problem -> problem.code() == code && problem.place().line() == line
                        && problem.text().contains(text));
    }

    /** That the right key is missing is no second problem. */
    @Test
    void visit_misspelledKey_oneProblem() throws IOException {
        Path file = edited("visits/late-call.yaml", "site: pennon", "sitte: pennon");

        ShopFolder folder = DemoShop.read(shop);
        DemoShop.visit(folder, file);

        assertThat(folder.problems()).extracting(Problem::text).singleElement().asString().startsWith(
                "visits/late-call.yaml:4: sitte: there is no key \"sitte\" here (did you mean \"site\"? allowed: asked, ");
    }

    @Test
    void visit_manyFaults_allInOneReport() throws IOException {
        Path file = shop.resolve("visits/many.yaml");
        Files.writeString(file, """
                format: 1
                site: crumb-lane-bakery
                poeple: []
                people:
                  - {name: A, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T09:00, on: repair}
                  - {name: B, grade: lead, arrived: 2026-11-01T01:30, left: 2026-11-01T03:00, on: parts}
                  - name: C
                    grade: lead
                    arrived: 2026-05-13T10:00
                    left: 2026-05-13T12:00
                    spent: [{until: 2026-05-13T11:00, on: repair}]
                  - {name: D, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T12:00}
                  - name: E
                    grade: lead
                    arrived: 2026-05-13T10:00
                    left: 2026-05-13T12:00
                    spent: [{until: 2026-05-13T11:00, on: repair}, {until: 2026-05-13T12:00}]
                lines:
                  - {material: water-filter, amount: 20000}
                  - {material: water-filter}
                  - {amount: 1}
                  - {material: water-filter, modifier: roof, amount: 1}
                  - {text: a lift, price: 20}
                  - {text: a lift, class: travel}
                  - {text: a lift, class: travel, price: 20, markup: 5}
                  - {text: a core, class: parts, cost: 20, back: core-return, outcome: goodwill}
                  - {text: a lift, class: lifts, price: -20}
                  - {material: water-filter, amount: 1, price: 20}
                  - {material: water-filter, amount: 1, outcome: goodwill, less: {percent: 5, reason: x}}
                  - {material: water-filter, amount: 1, less: {percent: 5, amount: 2, reason: x}}
                  - {text: a core, class: parts, price: 20, back: core-return, less: {amount: 2.005}}
                less:
                  - {class: repairs, percent: 120, reason: x}
                """);

        ShopFolder folder = DemoShop.read(shop);
        DemoShop.visit(folder, file);

        assertThat(folder.problems()).extracting(problem -> problem.code() + " " + problem.place().line())
                .containsExactlyInAnyOrder("UNKNOWN_KEY 3", "WRONG_ORDER 5", "AMBIGUOUS_TIME 6", "NOT_ALLOWED 6",
                        "WRONG_ORDER 11", "MISSING 12", "MISSING 17", "OUT_OF_RANGE 19", "MISSING 20", "NOT_ALLOWED 21",
                        "NOT_ALLOWED 22", "MISSING 23", "MISSING 24", "NOT_ALLOWED 25", "NOT_ALLOWED 26", "MISSING 26",
                        "NOT_ALLOWED 27", "OUT_OF_RANGE 27", "NOT_ALLOWED 28", "NOT_ALLOWED 29", "NOT_ALLOWED 30",
                        "NOT_ALLOWED 31", "MISSING 31", "OUT_OF_RANGE 31", "NOT_ALLOWED 33", "OUT_OF_RANGE 33");
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            shop.yaml                | language: en             | language: it                  | UNKNOWN_NAME     | there is no language "it"
            shop.yaml                | currency: USD            | currency: XAU                 | UNKNOWN_CURRENCY | there is no currency "XAU" with minor units
            shop.yaml                | zone: America/New_York   | zone: America/New_Yorck       | UNKNOWN_NAME     | there is no time zone "America/New_Yorck" (did you mean "America/New_York"?
            shop.yaml                | zone: America/New_York   | zone: Home                    | UNKNOWN_NAME     | there is no time zone "Home" (
            shop.yaml                | format: 1                | format: 2                     | NOT_ALLOWED      | found the number 2 (the version of this file's layout: 1)
            pricing/labor.yaml       | increment: 15            | increment: 0                  | OUT_OF_RANGE     | found the number 0
            pricing/labor.yaml       | after: 300               | after: 0                      | OUT_OF_RANGE     | found the number 0
            pricing/labor.yaml       | onRoof: alone            | onRoof: alon                  | NOT_ALLOWED      | found the text "alon"
            pricing/labor.yaml       | standard: 98.00,         | standard: 98.005,             | OUT_OF_RANGE     | finer than USD is paid (at most 2 decimals)
            pricing/labor.yaml       | standard: 98.00,         | standart: 98.00,              | UNKNOWN_NAME     | there is no labor band "standart" (did you mean "standard"?
            pricing/labor.yaml       | standard: 98.00,         | standart: 98.00,              | MISSING          | no price for the band "standard"
            pricing/labor.yaml       | otherwise: after-hours   | otherwise: after-ours         | UNKNOWN_NAME     | there is no labor band "after-ours"
            pricing/labor.yaml       | until: "17:00"           | until: "06:00"                | WRONG_ORDER      | until 06:00, but from 07:00
            pricing/labor.yaml       | from: "00:00"            | from: "24:00"                 | NOT_ALLOWED      | found the text "24:00" (a time of day in quotes, such as "07:00", from "00:00" to "23:59")
            pricing/labor.yaml       | from: 2026-01-01}        | from: 2026-01-01, until: 2026-02-30} | NOT_ALLOWED | there is no day 2026-02-30
            pricing/labor.yaml       | yearly: "01-01"          | yearly: "02-30"               | NOT_ALLOWED      | not a rule for a holiday
            pricing/labor.yaml       | - id: helper             | - id: lead                    | DUPLICATE_NAME   | "lead" is used a second time
            pricing/labor.yaml       | from: 2026-01-01}        | from: 2026-01-01, until: 2025-01-01} | WRONG_ORDER | ends on 2025-01-01
            pricing/taxes.yaml       | percent: 0.375, levy: local} | percent: 0.375, levy: local, cap: 0} | OUT_OF_RANGE | found the number 0
            pricing/taxes.yaml       | percent: 0.375, levy: local} | percent: 0.375, levy: local, cap: 5.005} | OUT_OF_RANGE | finer than USD is paid
            pricing/taxes.yaml       | percent: 0.375, levy: local} | percent: 0.375, levy: local, cap: 5000}\\n    pricesIncludeTax: true | NOT_ALLOWED | prices with their tax in a place that taxes each line only up to a cap
            pricing/taxes.yaml       | percent: 19, levy: nation} | percent: 19, levy: nation, cap: 5000} | NOT_ALLOWED | a cap in a place with VAT
            pricing/taxes.yaml       | state: NY                | state: NY\\n    exemptions: {resale: {percent: 101}} | OUT_OF_RANGE | found the number 101
            pricing/taxes.yaml       | state: NY                | state: NY\\n    exemptions: {reseller: {percent: 50}} | UNKNOWN_KEY | there is no key "reseller" here
            pricing/taxes.yaml       | state: NY                | state: NY\\n    exemptions: {resale: {classes: [labor]}} | NOT_ALLOWED | found the text "labor"
            pricing/taxes.yaml       | system: vat              | system: vat\\n    exemptions: {resale: {percent: 50}} | NOT_ALLOWED | certificates free nobody of VAT
            pricing/adjustments.yaml | classDiscounts:          | earlyPayment: {percent: 21, days: 10, on: net}\\nclassDiscounts: | OUT_OF_RANGE | found the number 21 (percent off, from 0 to 20
            pricing/adjustments.yaml | classDiscounts:          | cardCost: {percent: 2.9}\\nclassDiscounts: | MISSING | "each" is missing
            pricing/adjustments.yaml | classDiscounts:          | earlyPayment: {percent: 2, days: 10}\\nclassDiscounts: | MISSING | "on" is missing (of what it is: net
            pricing/adjustments.yaml | classDiscounts:          | earlyPayment: {percent: 2, days: 10, on: both}\\nclassDiscounts: | NOT_ALLOWED | found the text "both"
            pricing/labor.yaml       | kind: labor              | kind: labour                  | NOT_ALLOWED      | did you mean "labor"?
            pricing/labor.yaml       | increment: 15            | increment: {standard: 15}     | MISSING          | no number of minutes for the band "after-hours"
            pricing/labor.yaml       | minimum: 60              | minimum: {standard: 500, after-hours: 60, sundays-and-holidays: 60} | OUT_OF_RANGE | found the number 500
            pricing/labor.yaml       | wage: 46.50              | wage: {standard: 46.50, after-hours: 60, sunday: 70} | UNKNOWN_NAME | there is no labor band "sunday"
            pricing/labor.yaml       | minimum: 60              | firstHour: {standard: 130}\\n    minimum: 60 | MISSING | no price for the band "after-hours"
            pricing/labor.yaml       | increment: 15            | increment: 15\\ncounted: visits | NOT_ALLOWED  | did you mean "visit"?
            pricing/labor.yaml       | increment: 15            | increment: 15\\novertime: {after: 8, band: evenings} | UNKNOWN_NAME | there is no labor band "evenings"
            pricing/labor.yaml       | increment: 15            | increment: 15\\novertime: {after: 0, band: after-hours} | OUT_OF_RANGE | hours of one person on one visit, from 1 to 24
            pricing/service-call.yaml | beyond: 2.40            | beyond: 2.40\\nperMile: 1.85  | NOT_ALLOWED      | miles past the last zone would be charged twice
            pricing/service-call.yaml | beyond: 2.40            | beyond: 2.40\\nincludes: 500  | OUT_OF_RANGE     | found the number 500
            pricing/materials.yaml   | markup: 35               | markup: 35, price: 3          | UNREADABLE       | not YAML
            pricing/materials.yaml   | unit: floz               | unit: cup                     | NOT_ALLOWED      | found the text "cup"
            pricing/materials.yaml   | percent: 30}             | upTo: 110, percent: 30}       | MISSING          | no bracket for this cost
            pricing/materials.yaml   | - {upTo: 100.00, percent: 50} | - {upTo: 10.00, percent: 50} | WRONG_ORDER | this bracket is never used (brackets by rising upTo
            pricing/materials.yaml   | - {upTo: 10.00, percent: 80}  | - {percent: 80}              | WRONG_ORDER | this bracket is never used (brackets by rising upTo
            pricing/materials.yaml   | cost: 4.10               | cost: 4.10001                 | OUT_OF_RANGE     | found 4.10001, with more than 4 decimals
            pricing/materials.yaml   | markup: 35               | markup: 3500                  | OUT_OF_RANGE     | found the number 3500 (percent on the cost, from 0 to 1000
            pricing/materials.yaml   | id: descaler-bottle      | id: descaler                  | DUPLICATE_NAME   | "descaler" is used a second time
            pricing/tasks.yaml       | material: descaler       | material: descalor            | UNKNOWN_NAME     | there is no material "descalor" (did you mean "descaler"?
            pricing/tasks.yaml       | attended: 5              | attended: -5                  | OUT_OF_RANGE     | found the number -5 (minutes with a technician at the machine, from 0 to 480)
            pricing/tasks.yaml       | state: making-ice        | state: making ice             | NOT_ALLOWED      | did you mean "making-ice"?
            pricing/service-call.yaml | upTo: 30                | upTo: 3000                    | OUT_OF_RANGE     | found the number 3000
            pricing/service-call.yaml | after-hours: 78.00, sun | sun                           | MISSING          | no price for the band "after-hours"
            pricing/adjustments.yaml | amount: 10.00            | amount: 10.00, percent: 5     | NOT_ALLOWED      | needs an amount or a percent (one of the two)
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, always: true}\\nclassDiscounts: | NOT_ALLOWED | needs an amount or a percent (one of the two)
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, amount: 5, cap: 9}\\nclassDiscounts: | NOT_ALLOWED | cap does not go with an amount
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, percent: 5, on: [parts], under: 9}\\nclassDiscounts: | NOT_ALLOWED | under does not go with a percent
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, percent: 5}\\nclassDiscounts: | MISSING | "on" is missing
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, percent: 5, on: [parts], floor: 9, cap: 5}\\nclassDiscounts: | WRONG_ORDER | the cap 5.00 is below the floor 9.00
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, amount: 5, regions: [New York]}\\nclassDiscounts: | NOT_ALLOWED | a place by ISO 3166, such as US-NY or DE
            pricing/adjustments.yaml | classDiscounts:          | fees:\\n  - {id: a, name: {en: a, es: a}, class: travel, amount: 5.005}\\nclassDiscounts: | OUT_OF_RANGE | finer than USD is paid
            pricing/tiers.yaml       | scopes:                  | flat:\\n  machines:\\n    - {scope: full-clean, make: batch, upTo: 500, price: 265}\\n    - {scope: full-claen, make: batch, upTo: 600, price: 300}\\nscopes: | UNKNOWN_NAME | there is no scope "full-claen"
            pricing/tiers.yaml       | scopes:                  | flat:\\n  machines:\\n    - {scope: full-clean, make: batch, upTo: 500, price: 265}\\n    - {scope: full-clean, make: batch, upTo: 500.0, price: 300}\\nscopes: | DUPLICATE_NAME | a second price for the same scope, make and size
            pricing/tiers.yaml       | scopes:                  | flat:\\n  machines:\\n    - {scope: full-clean, make: batch, upTo: 500, price: 265}\\n    - {scope: full-clean, make: cubes, upTo: 600, price: 300}\\nscopes: | NOT_ALLOWED | found the text "cubes"
            pricing/taxes.yaml       | cleaning: {taxability: taxable, rate: sales} | cleaning: {taxability: taxable, rate: sails} | UNKNOWN_NAME | there is no rate of this place "sails"
            pricing/taxes.yaml       | cleaning: {taxability: taxable, rate: sales} | cleaning: {taxability: taxable} | MISSING | taxed, but at no rate of category S
            pricing/tiers.yaml       | scope: full-clean}       | scope: full-claen}            | UNKNOWN_NAME     | there is no scope "full-claen" (did you mean "full-clean"?
            pricing/tiers.yaml       | {name: {en: second cleaning, es: segunda limpieza}, scope: full-clean} | {name: {en: b, es: b}, scope: full-clean}\\n      - {name: {en: c, es: c}, scope: light-visit}\\n      - {name: {en: d, es: d}, scope: light-visit}\\n      - {name: {en: e, es: e}, scope: light-visit} | NOT_ALLOWED | 5 slots are not whole months apart in a year (1, 2, 3, 4, 6 or 12 slots)
            pricing/tiers.yaml       | brush-condenser, wash    | brush-condensor, wash         | UNKNOWN_NAME     | there is no task "brush-condensor" (did you mean "brush-condenser"?
            pricing/tiers.yaml       | material: water-filter   | material: water-filtre        | UNKNOWN_NAME     | there is no material "water-filtre" (did you mean "water-filter"?
            pricing/tiers.yaml       | exclusions: [sealed-system | exclusions: [sealed-sistem  | UNKNOWN_NAME     | there is no exclusion "sealed-sistem" (did you mean "sealed-system"?
            pricing/tiers.yaml       | {standard: 24, after     | {after                        | MISSING          | no response for the band "standard"
            pricing/tiers.yaml       | {standard: 24, after     | {normal: 24, standard: 24, after | UNKNOWN_NAME  | there is no labor band "normal"
            pricing/tiers.yaml       | {standard: 24, after     | {standard: 0, after           | OUT_OF_RANGE     | found the number 0 (hours, from 1 to 720)
            pricing/tiers.yaml       | callDiscounts: {cleaning | callDiscounts: {claening      | UNKNOWN_KEY      | there is no key "claening"
            pricing/tiers.yaml       | priceStep: 5.00          | machineDiscount: [{from: 3, percent: 8}, {from: 3, percent: 9}]\\n    priceStep: 5.00 | WRONG_ORDER | from 3, 9 % does not go on from the step before it (steps by rising number, each with a higher percentage
            pricing/tiers.yaml       | priceStep: 5.00          | siteDiscount: [{from: 3, percent: 8}, {from: 5, percent: 8}]\\n    priceStep: 5.00 | WRONG_ORDER | from 5, 8 % does not go on from the step before it
            pricing/tiers.yaml       | priceStep: 5.00          | siteDiscount: [{from: 1, percent: 8}]\\n    priceStep: 5.00 | OUT_OF_RANGE | found the number 1 (sites of one agreement from which it holds, from 2 to 1000)
            pricing/tiers.yaml       | priceStep: 5.00          | priceStep: 0.005              | OUT_OF_RANGE     | found 0.005, finer than USD is paid
            pricing/tiers.yaml       | priceStep: 5.00          | priceStep: 0                  | OUT_OF_RANGE     | found the number 0 (a year's price is a full multiple of it
            pricing/tiers.yaml       | renewalCap: 5            | renewalcap: 5                 | UNKNOWN_KEY      | did you mean "renewalCap"?
            pricing/tiers.yaml       | id: quarterly            | id: semiannual                | DUPLICATE_NAME   | "semiannual" is used a second time
            pricing/tiers.yaml       | months: 6, task           | months: 13, task                 | OUT_OF_RANGE     | found the number 13 (months that a water filter may stay in, from 1 to 12)
            pricing/energy.yaml      | from: 500, below: 1436   | from: 499, below: 1436         | WRONG_ORDER      | from 499 to below 1436 (rows by rising harvest rate, none twice: from 500 on)
            pricing/energy.yaml      | mark: published         | mark: read                     | NOT_ALLOWED      | found the text "read"
            pricing/energy.yaml      | until: 2018-01-28       | until: 2009-01-28              | WRONG_ORDER      | ends on 2009-01-28
            pricing/notices.yaml     | latest: 15               | latest: 31                    | WRONG_ORDER      | earliest 30 days before, latest 31 (earliest is the larger number
            pricing/notices.yaml     | moreThan: 1,             | moreThan: 1, atLeast: 2,      | NOT_ALLOWED      | needs moreThan or atLeast (one of the two)
            pricing/notices.yaml     | of: renewal, moreThan: 1, | of: renewal,                 | NOT_ALLOWED      | needs moreThan or atLeast (one of the two)
            pricing/notices.yaml     | jurisdiction: US-NY      | jurisdiction: New York        | NOT_ALLOWED      | found the text "New York" (a place by ISO 3166, such as US-NY or DE)
            pricing/notices.yaml     | [personal, certified-mail] | [personal, certifiedmail]   | NOT_ALLOWED      | did you mean "certified-mail"?
            pricing/notices.yaml     | from: 2011-07-01         | from: 2011-07-32              | NOT_ALLOWED      | there is no day 2011-07-32
            pricing/notices.yaml     | id: wi-134-49            | id: ny-5-903                  | DUPLICATE_NAME   | "ny-5-903" is used a second time
            pricing/notices.yaml     | anchor: renewal          | anchor: renewall              | NOT_ALLOWED      | did you mean "renewal"?
            pricing/taxes.yaml       | category: S              | category: Z                   | NOT_ALLOWED      | category Z with 3 components
            """)
    void shopAndRates_oneFault_reported(String name, String right, String wrong, Code code, String text)
            throws IOException {
        edited(name, right, wrong.replace("\\n", "\n"));

        List<Problem> problems = DemoShop.read(shop).problems();

        assertThat(problems).as(problems.toString())
                .anyMatch(problem -> problem.code() == code && problem.text().contains(text)
                        && problem.place().file().equals(name) && problem.place().line() > 0);
    }

    /** All that is wrong with two sheets, each where it is. */
    @Test
    void rateSheets_everyFaultIsOneReport() throws IOException {
        Files.writeString(shop.resolve("pricing/rate-sheet-a.yaml"), """
                format: 1
                kind: rate-sheet
                effective: {from: 2026-01-01}
                id: a
                name: {en: a, es: a}
                for: {customers: [fernhill-hotels]}
                labor:
                  - {grade: leed, hourly: {standard: 90.005}}
                  - {grade: lead, hourly: {normal: 90.00}}
                  - {grade: lead}
                serviceCall: {zones: [{zone: aera, prices: {standard: -5}}], includes: 500}
                materials:
                  - {material: water-filtre, price: 80.00}
                  - {material: water-filter, price: 80.00}
                  - {material: water-filter, price: 81.00}
                discount: {agreement: 5}
                without: [fuell]
                """);
        Files.writeString(shop.resolve("pricing/rate-sheet-b.yaml"), """
                format: 1
                kind: rate-sheet
                effective: {from: 2026-06-01}
                id: b
                name: {en: b, es: b}
                for: {customers: [fernhill-hotels]}
                """);
        Files.writeString(shop.resolve("pricing/rate-sheet-c.yaml"), """
                format: 1
                kind: rate-sheet
                effective: {from: 2026-06-01}
                id: c
                name: {en: c, es: c}
                for: {}
                """);

        assertThat(DemoShop.read(shop).problems()).extracting(problem -> problem.code() + " "
                + problem.place().file().replaceAll("[a-z/]*-sheet-|.yaml", "") + problem.place().line())
                .containsExactlyInAnyOrder("UNKNOWN_NAME a8", "OUT_OF_RANGE a8", "UNKNOWN_NAME a9", "MISSING a10",
                        "UNKNOWN_NAME a11", "OUT_OF_RANGE a11", "OUT_OF_RANGE a11", "UNKNOWN_NAME a13",
                        "DUPLICATE_NAME a15", "UNKNOWN_KEY a16", "UNKNOWN_NAME a17", "OVERLAP b4", "MISSING c6");
    }

    @Test
    void rates_twoFilesForTheSameDays_overlapNamesBoth() throws IOException {
        Files.copy(shop.resolve("pricing/labor.yaml"), shop.resolve("pricing/labor-next.yaml"));

        assertThat(DemoShop.read(shop).problems()).extracting(Problem::code).containsExactly(Code.OVERLAP);
        assertThat(DemoShop.read(shop).problems().getFirst().text()).contains("pricing/labor.yaml:5",
                "pricing/labor-next.yaml:5");
    }

    /** The end of the old prices is no day of the calendar: that they would overlap the new ones then is not said too. */
    @Test
    void rates_wrongDay_noOverlapReportedOnTop() throws IOException {
        Files.copy(shop.resolve("pricing/labor.yaml"), shop.resolve("pricing/labor-next.yaml"));
        edited("pricing/labor.yaml", "from: 2026-01-01}", "from: 2025-01-01, until: 2026-02-30}");

        assertThat(DemoShop.read(shop).problems()).extracting(Problem::text)
                .containsExactly(
                        "pricing/labor.yaml:5: effective.until: there is no day 2026-02-30 (a day of the calendar)");
    }

    /** That bands and rates are then missing everywhere else is no further problem. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"increment: 15 | increment: [", "kind: labor | kind: labour",
            "bands: | bonds:"})
    void rates_laborUnreadable_onlyThatReported(String right, String wrong) throws IOException {
        edited("pricing/labor.yaml", right, wrong);

        ShopFolder folder = DemoShop.read(shop);

        assertThat(folder.problems()).singleElement()
                .matches(problem -> problem.place().file().equals("pricing/labor.yaml"));
        assertThat(folder.schedule()).isEmpty();
        assertThat(folder.taxes()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "pricing/taxes.yaml | category: S | category: Z | NOT_ALLOWED pricing/taxes.yaml:24",
            "pricing/labor.yaml | es: horario normal | esp: horario normal | UNKNOWN_KEY pricing/labor.yaml:10",
            "pricing/tiers.yaml | kind: full-clean | kind: full | NOT_ALLOWED pricing/tiers.yaml:20",
            "pricing/materials.yaml | cost: 1.37 | cost: cheap | WRONG_TYPE pricing/materials.yaml:20"})
    void rates_entryWithAFault_whatNamesItIsNotReportedToo(String name, String right, String wrong, String report)
            throws IOException {
        edited(name, right, wrong);

        assertThat(DemoShop.read(shop).problems())
                .extracting(problem -> problem.code() + " " + problem.place().reference()).containsExactly(report);
    }

    /** So that the names in visits can still be looked up. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"increment: 15 | increment: 0", "otherwise: after-hours | otherwise: later",
            "onHolidays: | onHoliday:"})
    void rates_laborWithAFault_stillThere(String right, String wrong) throws IOException {
        edited("pricing/labor.yaml", right, wrong);

        ShopFolder folder = DemoShop.read(shop);

        assertThat(folder.problems()).hasSize(1);
        assertThat(folder.schedule()).isPresent();
    }

    @Test
    void rates_fileOfAKindGone_saidOnce() throws IOException {
        Files.delete(shop.resolve("pricing/taxes.yaml"));
        Files.delete(shop.resolve("pricing/labor.yaml"));

        ShopFolder folder = DemoShop.read(shop);

        assertThat(folder.problems()).extracting(Problem::text)
                .containsExactly("pricing: there is no file of kind labor"
                        + " (one file or more of each kind: labor, service-call, materials, tasks, adjustments, tiers,"
                        + " notices, taxes)");
        assertThat(folder.taxes()).isEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', textBlock = """
            harvestRate: 350      | harvestRate: -350           | OUT_OF_RANGE   | 43 | found the number -350 (pounds of ice in 24 hours, from 10 to 20000)
            miles: 4.2            | miles: 4200                 | OUT_OF_RANGE   | 27 | found the number 4200 (one way from the shop, from 0 to 1000)
            kind: bakery          | kind: bakry                 | UNKNOWN_NAME   | 26 | there is no kind of site "bakry" (did you mean "bakery"?
            installed: 2023-03-02 | installed: 2023-02-29       | NOT_ALLOWED    | 45 | there is no day 2023-02-29
            make: batch           | make: Batch                 | NOT_ALLOWED    | 37 | found the text "Batch" (did you mean "batch"?
            country: US           | country: USA                | NOT_ALLOWED    | 17 | found the text "USA" (the country's two capital letters
            - id: proof-room      | '- {id: proof-room}\n  - id: proof-room' | DUPLICATE_NAME | 35 | "proof-room" is used a second time
            accepted:             | acepted:                    | UNKNOWN_KEY    | 6  | there is no key "acepted" here (did you mean "accepted"?
            """)
    void site_oneFault_reportedWithLineAndWhatIsAllowed(String right, String wrong, Code code, int line, String text)
            throws IOException {
        edited("sites/crumb-lane-bakery.yaml", right, wrong.replace("\\n", "\n"));

        ShopFolder folder = DemoShop.read(shop);
        folder.site("crumb-lane-bakery", Place.NOWHERE);

        assertThat(folder.problems()).as(folder.problems().toString())
                .anyMatch(problem -> problem.code() == code && problem.place().line() == line
                        && problem.text().contains(text));
    }

    @Test
    void site_certificatesAndBillToInWrongOrder_reported() throws IOException {
        edited("sites/pennon-wharf-taproom.yaml", "expires: 2026-03-31", "expires: 2023-03-31");
        edited("sites/hotel-fernhill.yaml", "- from: 2026-04-01", "- from: 2026-03-01");

        ShopFolder folder = DemoShop.read(shop);
        folder.site("pennon-wharf-taproom", Place.NOWHERE);
        folder.site("hotel-fernhill", Place.NOWHERE);

        assertThat(folder.problems()).extracting(problem -> problem.code() + " " + problem.place().reference())
                .containsExactly("WRONG_ORDER sites/pennon-wharf-taproom.yaml:16",
                        "OVERLAP sites/hotel-fernhill.yaml:20");
    }

    /** What is wrong in shop.yaml keeps no other file from being looked at. */
    @Test
    void shop_withProblems_otherFilesStillChecked() throws IOException {
        edited("shop.yaml", "currency: USD", "currency: XAU");
        edited("pricing/labor.yaml", "increment: 15", "increment: fifteen");
        Path visit = edited("visits/late-call.yaml", "grade: lead", "grad: lead");

        ShopFolder folder = DemoShop.read(shop);
        assertThat(DemoShop.visit(folder, visit)).isEmpty();

        assertThat(folder.problems()).extracting(problem -> problem.code() + " " + problem.place().reference())
                .containsExactly("UNKNOWN_CURRENCY shop.yaml:29", "WRONG_TYPE pricing/labor.yaml:7",
                        "UNKNOWN_KEY visits/late-call.yaml:16");
    }

    /** A site is named, never pointed at. */
    @ParameterizedTest
    @ValueSource(strings = {"../shop", "\"a\\0b\"", "sites/crumb-lane-bakery"})
    void visit_siteIsAPath_refusedAndNotOpened(String site) throws IOException {
        Path file = edited("visits/late-call.yaml", "site: pennon-wharf-taproom", "site: " + site);

        ShopFolder folder = DemoShop.read(shop);

        assertThat(DemoShop.visit(folder, file)).isEmpty();
        assertThat(folder.problems()).extracting(Problem::code).containsExactly(Code.NOT_ALLOWED);
    }

    @Test
    void folder_filesThatAreNotReadOrMissing_reported() throws IOException {
        Files.move(shop.resolve("pricing/tasks.yaml"), shop.resolve("pricing/tasks.yml"));
        Path elsewhere = Files.createDirectory(shop.resolve("elsewhere"));

        ShopFolder folder = DemoShop.read(shop);

        assertThat(folder.problems()).extracting(Problem::text)
                .contains("pricing/tasks.yml: the file is not read (a name that ends in .yaml)");
        assertThat(DemoShop.read(elsewhere).problems()).extracting(Problem::text)
                .containsExactly("shop.yaml: there is no such file");
    }

    private Path edited(String name, String right, String wrong) throws IOException {
        Path file = shop.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(right);
        int at = text.indexOf(right);
        Files.writeString(file, text.substring(0, at) + wrong + text.substring(at + right.length()));
        return file;
    }
}
