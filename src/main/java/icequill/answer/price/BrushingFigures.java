package icequill.answer.price;

import icequill.document.BrushingSheet;
import icequill.party.Machine;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The figures of a brushing sheet; amounts before tax.
 *
 * @param yours machines that the customer's staff may brush, by id
 * @param left machines that a technician must brush, if anybody
 * @param ours the lines of a visit of ours for one brushing
 * @param visit their sum
 * @param own one brushing by the customer's own people
 * @param brush bought once
 * @param difference what the customer keeps the first time, if he would have called us for it
 * @param year twelve brushings of his own and the brush
 * @param savings of brushing every month; missing where the shop does not say by what to forecast
 */
public record BrushingFigures(LocalDate date, String customer, String site, List<String> yours, List<Left> left,
        List<Line> ours, Sum visit, Sum own, MonetaryAmount brush, Sum difference, Sum year,
        Optional<Savings> savings) {

    /** A machine, by id, and why it is not for the customer's staff. */
    public record Left(String machine, List<BrushingSheet.Reason> reasons) {}

    /** A line, and how its net was figured. */
    public record Line(String text, MonetaryAmount net, String how) {}

    /** An amount, and how it was figured. */
    public record Sum(MonetaryAmount amount, String how) {}

    /**
     * What a year of brushing every month may save.
     *
     * @param calls that dirty condensers would have brought and then do not, to a tenth
     * @param spared what those would have cost
     * @param bought what was paid for brushings in the last twelve months
     * @param kept both less twelve brushings of his own and the brush; negative where they cost more
     * @param electricity less of it in a year; missing where nothing is known of the machines
     * @param inputs when the condensers were brushed last, and which calls there were
     */
    public record Savings(BigDecimal calls, MonetaryAmount spared, MonetaryAmount bought, MonetaryAmount kept,
            Optional<Electricity> electricity, List<Input> inputs) {
        public Savings {
            inputs = List.copyOf(inputs);
        }
    }

    /** What a figure goes by, and who says so; in the language of the sheet. */
    public record Input(String what, String origin) {}

    /** No dirt to speak of, some, much. */
    public record Electricity(MonetaryAmount low, MonetaryAmount middle, MonetaryAmount high) {}

    public static BrushingFigures of(BrushingSheet sheet) {
        Sentences sentences = Sentences.of(sheet.language(), sheet.shop().address().country());
        BrushingSheet.Comparison comparison = sheet.comparison();
        return new BrushingFigures(sheet.date(), sheet.customer(), sheet.site(),
                sheet.yours().stream().map(Machine::id).toList(),
                sheet.left().stream().map(left -> new Left(left.machine().id(), left.reasons())).toList(),
                comparison.ours().stream().map(line -> new Line(sentences.say(line.text()), line.net(),
                        line.how().text(line.net().getCurrency()))).toList(),
                sum(comparison.visit()), sum(comparison.own()), comparison.brush(), sum(comparison.difference()),
                sum(comparison.year()), sheet.savings().map(savings -> savings(savings, sentences)));
    }

    private static Sum sum(BrushingSheet.Sum sum) {
        return new Sum(sum.amount(), sum.how().text(sum.amount().getCurrency()));
    }

    private static Savings savings(BrushingSheet.Savings savings, Sentences sentences) {
        return new Savings(savings.calls(), savings.spared(), savings.bought(), savings.kept(), savings.electricity()
                .map(power -> new Electricity(power.low(), power.middle(), power.high())),
                savings.inputs().stream()
                        .map(input -> new Input(sentences.say(input.what()), sentences.say(input.origin())))
                        .toList());
    }
}
