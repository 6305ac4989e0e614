package icequill.web;

import icequill.answer.minutes.MinutesSheet;
import icequill.office.care.AskedPeriod;
import icequill.office.care.MinutesOffice;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;

/** What visits took against what is planned, for the owner. */
final class MinutesPage implements Page {

    /**
     * What its page shows.
     *
     * @param told empty where nothing can be told
     */
    public record Shown(Optional<Told> told, TypedFields typed) {}

    /**
     * Tables, and what stands around them.
     *
     * @param lead above them
     * @param note below them
     * @param settings what to put into the shop's file, a sentence first
     */
    public record Told(List<String> lead, List<Table> tables, String note, List<String> settings) {

        public Told {
            lead = List.copyOf(lead);
            tables = List.copyOf(tables);
            settings = List.copyOf(settings);
        }

        private static Told of(MinutesSheet sheet) {
            return new Told(sheet.lead(),
                    List.of(new Table(sheet.title("tasks"), sheet.taskHeads(), sheet.tasks(), 2),
                            new Table(sheet.title("machines"), sheet.heads(), sheet.machines(), 1),
                            new Table(sheet.title("people"), sheet.heads(), sheet.people(), 1)),
                    sheet.title("people.note"), sheet.settings());
        }
    }

    /**
     * Rows, each with as many cells as there are heads.
     *
     * @param words how many columns hold words; the others hold figures
     */
    public record Table(String title, List<String> heads, List<List<String>> rows, int words) {

        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        Validated<MinutesSheet> worked = MinutesOffice.of(asked.book()).of(
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()), asked.reader().today(),
                Optional.of(asked.reader().language()));
        return Answer.Shown.orProblems("minutes",
                new Shown(worked.found().map(Told::of), new TypedFields(asked.fields(), worked.problems())), worked);
    }
}
