package icequill.einvoice;

import com.helger.diagnostics.error.IError;
import com.helger.diver.api.coord.DVRCoordinate;
import com.helger.io.resource.inmemory.ReadableResourceByteArray;
import com.helger.phive.api.execute.ValidationExecutionManager;
import com.helger.phive.api.executorset.ValidationExecutorSetRegistry;
import com.helger.phive.api.result.ValidationResultList;
import com.helger.phive.api.validity.IValidityDeterminator;
import com.helger.phive.en16931.EN16931Validation;
import com.helger.phive.xml.source.IValidationSourceXML;
import com.helger.phive.xml.source.ValidationSourceXML;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The official rules of EN 16931 (CEN/TC 434 validation artefacts, release 1.3.16), loaded once for all tests. */
record SchematronRules(DVRCoordinate id) {

    static final SchematronRules UBL_INVOICE = new SchematronRules(EN16931Validation.VID_UBL_INVOICE_1316);
    static final SchematronRules UBL_CREDIT_NOTE = new SchematronRules(EN16931Validation.VID_UBL_CREDIT_NOTE_1316);
    static final SchematronRules CII = new SchematronRules(EN16931Validation.VID_CII_1316);

    /** Held on to, so that its level stays: the libraries tell of every document they look at. */
    private static final Logger LIBRARIES = Logger.getLogger("com.helger");

    private static final ValidationExecutorSetRegistry<IValidationSourceXML> RULES = rules();

    /** A broken rule, by its id; for a fault against the schema, the text. */
    record Fault(String id, String text) {}

    private static ValidationExecutorSetRegistry<IValidationSourceXML> rules() {
        LIBRARIES.setLevel(Level.WARNING);
        ValidationExecutorSetRegistry<IValidationSourceXML> registry = new ValidationExecutorSetRegistry<>();
        EN16931Validation.initEN16931(registry);
        return registry;
    }

    /** The errors; warnings are left out. */
    List<Fault> faults(byte[] xml) {
        ValidationResultList results = ValidationExecutionManager.executeValidation(
                IValidityDeterminator.createDefault(), Objects.requireNonNull(RULES.getOfID(id)),
                ValidationSourceXML.create(new ReadableResourceByteArray(xml)), Locale.ROOT);
        return results.getAllErrors().stream().map(SchematronRules::fault).toList();
    }

    List<String> ids(byte[] xml) {
        return faults(xml).stream().map(Fault::id).distinct().sorted().toList();
    }

    private static Fault fault(IError error) {
        return new Fault(String.valueOf(error.getErrorID()), error.getAsString(Locale.ROOT));
    }
}
