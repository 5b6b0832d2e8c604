package org.amberyard.pdfua;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Holds a PDF against what a machine can check of ISO 14289-1:2014 (PDF/UA-1). */
final class Validator {
    /** Faults alike are told so often at most. */
    private static final int TOLD = 3;

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Validator() {
    }

    /** What the file fails: clause, reason and place; empty where it conforms. */
    static List<String> faults(byte[] pdf) throws IOException {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, TOLD, false, false, false)) {
            ValidationResult result = validator.validate(parser);
            if (result.getTotalAssertions() == 0) {
                return List.of("nothing was checked");
            }
            return result.getTestAssertions().stream().filter(t -> t.getStatus() == TestAssertion.Status.FAILED)
                    .map(t -> t.getRuleId().getClause() + ": " + t.getMessage() + " at " + t.getLocation().getContext()).toList();
        } catch (ModelParsingException | EncryptedPdfException | ValidationException e) {
            throw new IOException(e);
        }
    }
}
