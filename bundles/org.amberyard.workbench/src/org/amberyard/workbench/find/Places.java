package org.amberyard.workbench.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.model.common.Sourced;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.find.Section.Line;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.views.ResultsView;
import org.amberyard.workbench.views.StudyEditors;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.IViewDescriptor;

/** Everything in a window that has a name, with the way to it, and what can be done by a menu. */
final class Places {
    private static final String VIEWS = "org.amberyard.workbench.";

    private final IWorkbenchPage page;

    Places(IWorkbenchPage page) {
        this.page = page;
    }

    /** All of it; fields and elements as far as a study is open. */
    List<Section> sections() {
        List<Section> all = new ArrayList<>(List.of(new Section(Messages.Find_views, views())));
        Section commands = new Section(Messages.Find_commands, new MenuCommands(page.getWorkbenchWindow()).lines());
        if (page.getActiveEditor() instanceof StudyEditor editor) {
            all.add(new Section(Messages.Find_pages, Arrays.stream(PageKind.values())
                    .map(kind -> new Line(kind.title(), () -> editor.show(kind))).toList()));
            all.add(commands);
            all.add(new Section(Messages.Find_tables, tables()));
            List<EObject> elements = elements(editor);
            all.add(new Section(Messages.Find_fields, fields(elements)));
            all.add(new Section(Messages.Find_elements, elements.stream().map(this::line).toList()));
            all.add(new Section(Messages.Find_notes, notes(elements)));
        } else {
            all.add(commands);
        }
        return all;
    }

    private List<Line> views() {
        return Arrays.stream(page.getWorkbenchWindow().getWorkbench().getViewRegistry().getViews())
                .filter(v -> v.getId().startsWith(VIEWS)).sorted(Comparator.comparing(IViewDescriptor::getLabel))
                .map(v -> new Line(v.getLabel(), () -> show(v.getId()))).toList();
    }

    private void show(String view) {
        try {
            page.showView(view);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<Line> tables() {
        List<String> titles = ResultTables.titles();
        return IntStream.range(0, titles.size()).mapToObj(t -> new Line(Words.say(titles.get(t)), () -> ResultsView.show(page, t))).toList();
    }

    private static List<EObject> elements(StudyEditor editor) {
        List<EObject> elements = new ArrayList<>();
        for (TreeIterator<EObject> all = editor.session().study().eAllContents(); all.hasNext();) {
            elements.add(all.next());
        }
        return elements;
    }

    private Line line(EObject element) {
        return new Line(NLS.bind(Messages.Find_named, Words.name(element), Words.kind(element.eClass())),
                () -> StudyEditors.open(page, element, null));
    }

    private List<Line> notes(List<EObject> elements) {
        return elements.stream().filter(Sourced.class::isInstance).map(Sourced.class::cast)
                .filter(e -> e.getNote() != null && !e.getNote().isBlank())
                .map(e -> new Line(NLS.bind(Messages.Find_named, e.getNote().replace('\n', ' '), Words.withKind(e)),
                        () -> StudyEditors.open(page, e, null)))
                .toList();
    }

    /** Each field once, in the first element that has it. */
    private List<Line> fields(List<EObject> elements) {
        Map<EClass, EObject> firsts = new LinkedHashMap<>();
        elements.forEach(e -> firsts.putIfAbsent(e.eClass(), e));
        List<Line> lines = new ArrayList<>();
        firsts.forEach((kind, first) -> Columns.of(kind).forEach(field -> lines.add(line(kind, first, field))));
        return lines;
    }

    private Line line(EClass kind, EObject first, EStructuralFeature field) {
        return new Line(NLS.bind(Messages.Find_named, Words.field(field).label(), Words.kind(kind)),
                () -> StudyEditors.open(page, first, field));
    }
}
