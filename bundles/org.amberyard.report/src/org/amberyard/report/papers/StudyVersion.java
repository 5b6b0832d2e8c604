package org.amberyard.report.papers;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A short sum over everything in a study: the same for the same study, another for any change, wherever it is stored. */
final class StudyVersion {
    private static final int SHOWN_DIGITS = 12;
    /** That a text was given out changes nothing that it says; else a document would bear another version than its study. */
    private static final Set<EStructuralFeature> KEPT_FOR_THE_READER = Set.of(StudyPackage.Literals.STUDY__FORMAT_VERSION,
            StudyPackage.Literals.NARRATIVE__GIVEN_OUT_FOR, StudyPackage.Literals.NARRATIVE__GIVEN_OUT_TO, StudyPackage.Literals.NARRATIVE__GIVEN_OUT_ON);

    /** What plans stand on is the same however it is shown. */
    private static final Set<EStructuralFeature> FOR_DISPLAY = Set.of(StudyPackage.Literals.SETTINGS__UNITS);

    private final MessageDigest digest;
    private final Set<EStructuralFeature> without;

    private StudyVersion(MessageDigest digest, Set<EStructuralFeature> without) {
        this.digest = digest;
        this.without = without;
    }

    static String of(Study study) {
        StudyVersion version = new StudyVersion(begun(), KEPT_FOR_THE_READER);
        version.addWhole(study);
        return version.sum();
    }

    /** A sum over a part of a study, elements that some of its lists and fields hold: the same for another choice of what is only shown. */
    static String of(Study study, List<? extends EReference> parts) {
        StudyVersion version = new StudyVersion(begun(), FOR_DISPLAY);
        for (EReference part : parts) {
            Object held = study.eGet(part);
            List<?> elements = held instanceof List<?> list ? list : held == null ? List.of() : List.of(held);
            elements.forEach(element -> version.addWhole((EObject) element));
        }
        return version.sum();
    }

    private static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    private void addWhole(EObject root) {
        add(root);
        for (TreeIterator<EObject> all = root.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (!(element instanceof GivenOutFigure)) {
                add(element);
            }
        }
    }

    private String sum() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, SHOWN_DIGITS);
    }

    private void add(EObject element) {
        add(element.eClass().getName());
        for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
            boolean stored = !feature.isTransient() && !without.contains(feature);
            if (stored && element.eGet(feature) != null) {
                add(element, feature);
            }
        }
    }

    private void add(EObject element, EStructuralFeature feature) {
        List<?> values = feature.isMany() ? (List<?>) element.eGet(feature) : List.of(element.eGet(feature));
        for (Object value : values) {
            if (feature instanceof EAttribute attribute) {
                add(feature.getName() + "=" + EcoreUtil.convertToString(attribute.getEAttributeType(), value));
            } else if (!((EReference) feature).isContainment()) {
                add(feature.getName() + ">" + ElementNames.withKind((EObject) value));
            }
        }
    }

    private void add(String text) {
        digest.update((text + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
