package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.grid.ListModel;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;

/** The notes of a study as a table. */
final class NotesModel extends ListModel<NotesModel.Noted> {

    private static final List<String> HEADERS = List.of(Messages.Notes_where, Messages.Notes_note);

    record Noted(Sourced element, String where, String note) {
    }

    private NotesModel(List<Noted> notes) {
        super(HEADERS, notes);
    }

    /** No study, no notes. */
    static NotesModel empty() {
        return new NotesModel(List.of());
    }

    /** The notes in which words stand, in the order of the study. */
    static NotesModel of(Study study, String search) {
        RowWords words = new RowWords(search);
        List<Noted> found = new ArrayList<>();
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject next = all.next();
            if (next instanceof Sourced element && element.getNote() != null && !element.getNote().isBlank()) {
                Noted noted = new Noted(element, Phrase.start(Words.withKind(element)), element.getNote());
                if (words.in(() -> Stream.of(noted.where(), noted.note()))) {
                    found.add(noted);
                }
            }
        }
        return new NotesModel(found);
    }

    /** The element of a row. */
    Sourced element(int row) {
        return line(row).element();
    }

    @Override
    public Object subject(int row, int column) {
        return element(row);
    }

    @Override
    public String text(int row, int column) {
        Noted noted = line(row);
        return column == 0 ? noted.where() : noted.note().replace('\n', ' ');
    }

    @Override
    public String fullText(int row, int column) {
        return column == 0 ? line(row).where() : line(row).note();
    }

    @Override
    public String tip(int row, int column) {
        return line(row).note();
    }
}
