package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.InputSource;
import org.amberyard.study.VariedNumber;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Every input of a study with its value and where it came from: the source that the user noted, else the model's own default,
 * else that nothing is known of it.
 */
public final class InputRegister {
    /** Stands for the quality of what is no value but was noted of an element. */
    private static final String REMARK = "remark";
    private static final int LONGEST_TEXT = 1000;
    private static final int SHOWN_OF_LONG = 60;

    private final Study study;
    private final UnitSystem system;
    private final List<List<Object>> rows = new ArrayList<>();

    private InputRegister(Study study) {
        this.study = study;
        this.system = StudyUnits.of(study);
    }

    /** The table, in the order of the study and in its units; to be called where the study may be read. */
    public static ResultTable of(Study study) {
        InputRegister register = new InputRegister(study);
        register.add(study);
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (!(element instanceof SourceNote || element instanceof Narrative || element instanceof GivenOutFigure)) {
                register.add(element);
            }
        }
        return new ResultTable("inputs", "Inputs and their sources", columns(), register.rows);
    }

    private static List<ResultColumn> columns() {
        return List.of(text("element", "Element", "Kind and name of the element that the input belongs to."),
                text("field", "Input", "Label of the input."),
                text("value", "Value", "Its value in the units of the study."),
                text("unit", "Unit", "Unit of the value."),
                text("quality", "Quality",
                        "Measured, quoted, published, assumed, placeholder, default, or no source given; a remark where it is a note on the element."),
                text("source", "Source", "Citation that was noted, or the source of the default."),
                text("date", "Date", "Date of the source."));
    }

    private static ResultColumn text(String name, String label, String meaning) {
        return new ResultColumn(name, label, "", ResultColumn.Type.TEXT, meaning);
    }

    private void add(EObject element) {
        for (EStructuralFeature field : element.eClass().getEAllStructuralFeatures()) {
            if (isInput(field)) {
                rows.add(row(element, field));
            }
        }
        if (element instanceof Sourced noted && noted.getNote() != null && !noted.getNote().isBlank()) {
            rows.add(Arrays.asList(ElementNames.withKind(element), FieldInfo.of(CommonPackage.Literals.SOURCED__NOTE).label(),
                    brief(noted.getNote()), "", REMARK, "", null));
        }
    }

    /** True for what a user enters: neither a name nor what an element is made of. */
    static boolean isInput(EStructuralFeature field) {
        boolean elsewhere = field instanceof EAttribute || field instanceof EReference reference && !reference.isContainment();
        return elsewhere && !field.getName().equals("name") && field != CommonPackage.Literals.SOURCED__NOTE
                && field != StudyPackage.Literals.STUDY__FORMAT_VERSION;
    }

    private List<Object> row(EObject element, EStructuralFeature field) {
        FieldInfo info = FieldInfo.of(field);
        String currency = StudyUnits.currency(study);
        FieldFormat format = FieldFormat.of(field, system, currency, Locale.ROOT);
        Unit unit = VariedNumber.isOne(field) ? VariedNumber.unit(study, element) : Unit.ofToken(info.unitToken()).orElse(Unit.NONE);
        Object value = element.eGet(field);
        InputSource source = InputSource.of(element, field);
        List<Object> row = new ArrayList<>();
        row.add(ElementNames.withKind(element));
        row.add(info.label());
        row.add(format.isNumber() && value instanceof Number number && !format.isMissing(value) ? unit.show(number.doubleValue(), system)
                : brief(format.text(value)));
        row.add(unit.symbol(system, currency));
        row.add(source.quality());
        row.add(source.citation());
        row.add(source.date());
        return row;
    }

    /** The figures of a drive trace would drown the register; its beginning tells which one it is. */
    static String brief(String text) {
        return text.length() <= LONGEST_TEXT ? text
                : String.format(Locale.ROOT, "%s … (%,d characters)", text.substring(0, SHOWN_OF_LONG), text.length());
    }
}
