package icequill.ledger.papers;

import icequill.ledger.find.SearchKeys;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Reads what the book itself keeps as it was given: the data and the files of papers. */
public interface PaperReader {

    /** What the data within a paper's file are called. */
    String DATA = "paper.json";

    /**
     * What the data says of a paper.
     *
     * @param kind that its numbers count
     * @param number empty where a paper of its kind does not say it
     * @param due the last day to pay
     * @param sums of a paper with prices
     * @param taxes what each authority gets by it, or gives back
     * @param facts what it is found by; the customer as the paper alone names him
     */
    record Read(PaperKind kind, Optional<String> number, LocalDate date, Optional<LocalDate> due, Optional<Sums> sums,
            List<Levied> taxes, SearchKeys facts) {

        public Read {
            taxes = List.copyOf(taxes);
        }
    }

    /** The tax of one authority at one rate, named so that it is told from every other. */
    record Levied(String authority, MonetaryAmount amount) {}

    /**
     * What a file says of itself.
     *
     * @param marks as {@link Marks} wrote them
     * @param files that it carries, by name
     * @param bills what those of them say that programs book the paper by
     */
    record Carried(Map<String, String> marks, Map<String, String> files, List<Stated> bills) {

        public Carried {
            marks = Map.copyOf(marks);
            files = Map.copyOf(files);
            bills = List.copyOf(bills);
        }

        /** The paper's data. */
        public Optional<String> data() {
            return Optional.ofNullable(files.get(DATA));
        }

        /** Whether each file in it names the text, as an element's or a value's whole text. */
        public boolean eachNames(String text) {
            return files.values().stream()
                    .allMatch(file -> file.contains(">" + text + "<") || file.contains("\"" + text + "\""));
        }
    }

    /** What an electronic bill says that a paper's file carries. */
    record Stated(String file, LocalDate date, MonetaryAmount total, MonetaryAmount payable) {}

    Validated<Read> read(String json);

    Validated<Carried> carried(Pdf pdf);

    /** Whether a text without blanks is to be read on its pages. */
    boolean prints(Pdf pdf, String text);
}
