package icequill.files;

import icequill.document.CreditNote;
import icequill.document.CreditRequest;
import java.util.List;
import java.util.Optional;

/** Makes a request for a credit note from its file. */
final class CreditReader {

    private CreditReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    static Optional<CreditRequest> read(Fields fields) {
        Optional<CreditNote.Original> invoice = fields.child("invoice").flatMap(entry -> entry.text("number")
                .flatMap(number -> entry.day("date").map(day -> new CreditNote.Original(number, day))));
        Optional<String> visit = fields.text("visit");
        return invoice.flatMap(original -> visit.map(file -> new CreditRequest(original, file,
                fields.text("reason").orElse(""), numbers(fields, "lines"), numbers(fields, "creditedBefore"),
                fields.place("lines"))));
    }

    private static List<Integer> numbers(Fields fields, String key) {
        return fields.leaves(key).stream().filter(leaf -> leaf.text().matches("[0-9]{1,4}"))
                .map(leaf -> Integer.valueOf(leaf.text())).toList();
    }
}
