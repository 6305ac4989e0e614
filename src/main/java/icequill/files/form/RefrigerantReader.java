package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.work.RefrigerantWork;
import icequill.work.RefrigerantWork.LeakTest;
import icequill.work.RefrigerantWork.Moved;
import icequill.work.RefrigerantWork.Purpose;
import icequill.work.Unit;
import java.util.Optional;

/** Reads what was done with the refrigerant of a machine. */
final class RefrigerantReader {

    private RefrigerantReader() {
    }

    static RefrigerantWork read(Fields entry) {
        return new RefrigerantWork(entry.text("kind"), entry.text("unit").flatMap(Unit::ofSymbol).orElse(Unit.OUNCE),
                entry.number("charge"), moved(entry, "added", "from"), moved(entry, "recovered", "into"),
                entry.constant("purpose", Purpose.class).orElse(Purpose.SERVICE), entry.text("technician"),
                entry.text("leak"), entry.text("repair"), entry.child("test").flatMap(RefrigerantReader::test),
                entry.place());
    }

    private static Optional<Moved> moved(Fields entry, String key, String cylinder) {
        return entry.number(key).map(amount -> new Moved(amount, entry.text(cylinder)));
    }

    private static Optional<LeakTest> test(Fields entry) {
        return entry.constant("when", LeakTest.When.class)
                .map(when -> new LeakTest(when, entry.flag("tight"), entry.text("how")));
    }
}
