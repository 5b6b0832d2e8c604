package org.amberyard.study.whatif;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A short text that differs between studies whose inputs differ, and between versions of the method that works them out. */
public final class StudyFingerprint {
    /** Counts changes of what the draws of a seed are, which no run may go on across. */
    private static final String DRAWS = "6";

    private final Study study;
    private final MessageDigest digest;

    private StudyFingerprint(Study study) {
        this.study = study;
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** Of all inputs of a study, its what-if among them; narratives, which move no figure, are none. */
    public static String of(Study study) {
        return of(study, EngineVersion.VALUE);
    }

    static String of(Study study, String engineVersion) {
        StudyFingerprint print = new StudyFingerprint(study);
        print.add(engineVersion);
        print.add(DRAWS);
        print.add(study);
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (!(element instanceof Narrative || element instanceof GivenOutFigure)) {
                print.add(element);
            }
        }
        return HexFormat.of().formatHex(print.digest.digest());
    }

    private void add(EObject element) {
        add(element.eClass().getName() + " in " + (element.eContainingFeature() == null ? "" : element.eContainingFeature().getName()));
        for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
            boolean contained = feature instanceof EReference reference && (reference.isContainment() || reference.isContainer());
            if (!contained && !feature.isDerived()) {
                add(feature.getName());
                add(element.eGet(feature));
            }
        }
    }

    private void add(Object value) {
        if (value instanceof List<?> list) {
            add(Integer.toString(list.size()));
            list.forEach(this::add);
        } else {
            add(value instanceof EObject target ? EcoreUtil.getRelativeURIFragmentPath(study, target) : String.valueOf(value));
        }
    }

    private void add(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
        digest.update(bytes);
    }
}
