package org.amberyard.study.whatif;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A short text that differs between studies whose inputs differ, and between versions of the method that works them out. */
public final class StudyFingerprint {
    /** Counts changes of what the draws of a seed are, which no run may go on across. */
    private static final String DRAWS = "6";
    /** The choice of the grid of two inputs. */
    private static final Set<EStructuralFeature> GRID = Set.of(Literals.WHAT_IF__GRID_ACROSS, Literals.WHAT_IF__GRID_UPWARD,
            Literals.WHAT_IF__GRID_COLUMNS, Literals.WHAT_IF__GRID_ROWS);
    /** How far money is secured and what a notice asks for: documents and findings say it, no calculation reads it. */
    static final Set<EStructuralFeature> NO_FIGURE = Set.of(FundingPackage.Literals.PROGRAMME__STATUS,
            FundingPackage.Literals.PROGRAMME__LETTER, FundingPackage.Literals.PROGRAMME__RESTRICTIONS,
            PlansPackage.Literals.PLAN__OWN_STATUS, PlansPackage.Literals.PLAN__OWN_LETTER);

    /** What is kept beside the inputs and moves no figure of a plan: texts, what came of years, what meters counted and utilities billed. */
    static final Set<EStructuralFeature> BESIDE = Set.of(StudyPackage.Literals.STUDY__NARRATIVES, StudyPackage.Literals.STUDY__ACTUALS,
            DepotPackage.Literals.DEPOT__METER_BILLS, DepotPackage.Literals.DEPOT__METER_DAYS);

    private final Study study;
    private final boolean grid;
    private final MessageDigest digest;

    private StudyFingerprint(Study study, boolean grid) {
        this.study = study;
        this.grid = grid;
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** Of all inputs of a study, its what-if among them; what is kept beside the inputs and how far money is secured, which move no figure, are none. */
    public static String of(Study study) {
        return of(study, EngineVersion.VALUE);
    }

    /** Of all inputs but the choice of the grid of two inputs, on which no other part of a what-if hangs. */
    static String withoutGrid(Study study) {
        return new StudyFingerprint(study, false).of(EngineVersion.VALUE);
    }

    static String of(Study study, String engineVersion) {
        return new StudyFingerprint(study, true).of(engineVersion);
    }

    private String of(String engineVersion) {
        add(engineVersion);
        add(DRAWS);
        add(study);
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (BESIDE.contains(element.eContainingFeature())) {
                all.prune();
            } else {
                add(element);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private void add(EObject element) {
        add(element.eClass().getName() + " in " + (element.eContainingFeature() == null ? "" : element.eContainingFeature().getName()));
        for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
            boolean contained = feature instanceof EReference reference && (reference.isContainment() || reference.isContainer());
            if (!contained && !feature.isDerived() && !NO_FIGURE.contains(feature) && (grid || !GRID.contains(feature))) {
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
