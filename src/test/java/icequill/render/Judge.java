package icequill.render;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The reference validator of PDF/A and PDF/UA, veraPDF. */
public final class Judge {

    /** What every paper must be: PDF/A-3a and PDF/UA-1. */
    public static final List<String> STANDARDS = List.of("3a", "ua1");

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Judge() {
    }

    /** The rules of the standard that a file breaks, as clause and number, each once. */
    public static List<String> brokenRules(byte[] pdf, String standard) throws Exception {
        PDFAFlavour flavour = PDFAFlavour.fromString(standard);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber())
                    .distinct().sorted().toList();
        }
    }
}
