package icequill.files.form;

import icequill.document.CreditNote;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.request.CreditRequest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes a request for a credit note from its file. */
public final class CreditReader {

    private CreditReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public static Optional<CreditRequest> read(Fields fields) {
        Optional<CreditNote.Original> invoice = fields.child("invoice").flatMap(entry -> entry.text("number")
                .flatMap(number -> entry.day("date").map(day -> new CreditNote.Original(number, day))));
        Optional<String> visit = fields.text("visit");
        return invoice.flatMap(original -> visit.map(file -> new CreditRequest(original, file,
                fields.text("reason").orElse(""), numbers(fields.leaves("lines")), before(fields),
                fields.place("lines"), fields.place("creditedBefore"))));
    }

    /** The lines of each earlier note; plain numbers are those of one. */
    private static List<List<Integer>> before(Fields fields) {
        List<Integer> one = numbers(fields.leaves("creditedBefore"));
        return Stream.concat(Stream.of(one).filter(lines -> !lines.isEmpty()),
                fields.rows("creditedBefore").stream().map(CreditReader::numbers)).toList();
    }

    private static List<Integer> numbers(List<Tree.Leaf> leaves) {
        return leaves.stream().filter(leaf -> leaf.text().matches("[0-9]{1,4}"))
                .map(leaf -> Integer.valueOf(leaf.text())).toList();
    }
}
