package icequill.render;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import org.verapdf.pdfa.validation.profiles.Profiles;
import org.verapdf.pdfa.validation.profiles.ValidationProfile;

/** The reference validator of PDF/A and PDF/UA, veraPDF, and what of WCAG 2.2 it can judge by machine. */
public final class VeraPdf {

    /** What every paper must be: PDF/A-3a and PDF/UA-1. */
    public static final List<String> STANDARDS = List.of("3a", "ua1");

    private static final ValidationProfile WCAG;

    static {
        VeraGreenfieldFoundryProvider.initialise();
        try (InputStream profile = VeraPdf.class.getResourceAsStream("/wcag/WCAG-2-2-Machine.xml")) {
            WCAG = Profiles.profileFromXml(profile);
        } catch (Exception e) {
            throw new ExceptionInInitializerError(e);
        }
    }

    private VeraPdf() {
    }

    /** The rules of the standard that a file breaks, as clause and number, each once. */
    public static List<String> brokenRules(byte[] pdf, String standard) throws Exception {
        PDFAFlavour flavour = PDFAFlavour.fromString(standard);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return broken(validator.validate(parser));
        }
    }

    /** The rules of WCAG 2.2 that a machine can judge and that a file breaks, as clause and number, each once. */
    public static List<String> brokenByMachine(byte[] pdf) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf),
                WCAG.getPDFAFlavour());
                PDFAValidator validator = Foundries.defaultInstance().createValidator(WCAG, false)) {
            return broken(validator.validate(parser));
        }
    }

    private static List<String> broken(ValidationResult result) {
        return result.getTestAssertions().stream()
                .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                .map(assertion -> assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber())
                .distinct().sorted().toList();
    }
}
