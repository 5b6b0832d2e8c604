package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.PlaceWords;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What an uncertain input or a change of a scenario can point at in a study: kinds of which the study has an element, and of them
 * those that results hang on. Notes, texts, what was measured and the what-if itself are no inputs that could be otherwise.
 */
final class PlaceOffers {
    private static final Set<EClass> NO_INPUTS = Set.of(CommonPackage.Literals.SOURCED, CommonPackage.Literals.SOURCE_NOTE,
            StudyPackage.Literals.STUDY, StudyPackage.Literals.NARRATIVE, StudyPackage.Literals.GIVEN_OUT_FIGURE,
            StudyPackage.Literals.CHART_NOTE, StudyPackage.Literals.YEAR_ACTUALS, FleetPackage.Literals.CONSUMPTION_LOG);
    /** Of which years a study is and how it says figures; another choice would be another study. */
    private static final Set<EStructuralFeature> NO_FIELDS = Set.of(StudyPackage.Literals.SETTINGS__BASE_YEAR,
            StudyPackage.Literals.SETTINGS__FISCAL_YEAR_START, StudyPackage.Literals.SETTINGS__FISCAL_YEAR_NAMING,
            StudyPackage.Literals.SETTINGS__HORIZON_YEARS, StudyPackage.Literals.SETTINGS__PRICE_YEAR,
            StudyPackage.Literals.SETTINGS__CALENDAR_YEAR, StudyPackage.Literals.SETTINGS__MONEY_BASIS, StudyPackage.Literals.SETTINGS__UNITS);

    private final Study study;

    PlaceOffers(Study study) {
        this.study = study;
    }

    /** Kinds with a field to vary, and what several of them have in common, such as vehicle types. */
    List<EClass> kinds() {
        Set<EClass> kinds = new LinkedHashSet<>();
        all().map(EObject::eClass).distinct().forEach(kind -> {
            kinds.add(kind);
            kinds.addAll(kind.getEAllSuperTypes());
        });
        return kinds.stream().filter(k -> !NO_INPUTS.contains(k) && k.getEPackage() != WhatifPackage.eINSTANCE && !fields(k).isEmpty()).toList();
    }

    private Stream<EObject> all() {
        List<EObject> all = new ArrayList<>();
        for (TreeIterator<EObject> each = study.eAllContents(); each.hasNext();) {
            all.add(each.next());
        }
        return all.stream();
    }

    private static List<EStructuralFeature> fields(EClass kind) {
        return PlaceWords.fields(kind).stream().filter(f -> (FieldWords.isNumber(f) || FieldWords.isChoice(f)) && !NO_FIELDS.contains(f)).toList();
    }

    /** Labels of the fields of a kind that can be varied. */
    List<String> fieldLabels(EClass kind) {
        return fields(kind).stream().map(f -> Words.field(f).label()).toList();
    }

    /**
     * Names of the elements of a kind, with their owners' before them where several have one; none for a kind that is there once.
     *
     * @param every what stands for all of them
     */
    List<String> elements(EClass kind, String every) {
        List<EObject> elements = all().filter(kind::isInstance).toList();
        if (elements.size() < 2) {
            return List.of();
        }
        List<String> names = elements.stream().map(ElementNames::of).toList();
        Map<String, Long> times = names.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Stream<String> apart = IntStream.range(0, names.size()).mapToObj(i -> times.get(names.get(i)) == 1 ? names.get(i)
                : ElementNames.of(elements.get(i).eContainer()) + " / " + names.get(i));
        return Stream.concat(Stream.of(every), apart).distinct().toList();
    }
}
