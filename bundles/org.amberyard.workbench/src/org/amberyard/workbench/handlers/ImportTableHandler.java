package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.sheets.TableDialog;
import org.eclipse.swt.widgets.Shell;

/** Reads a workbook or a text file that the user chooses, and shows what it would do to the study. */
public final class ImportTableHandler extends ImportHandler<List<Sheet>> {

    @Override
    Words words() {
        return new Words(Messages.Table_title, Messages.Table_fileKind, "*.xlsx;*.csv;*.txt;*.tsv", Messages.Table_failed);
    }

    @Override
    FileReading<List<Sheet>> reading(Path file, StudyEditor editor) {
        return new SheetReading(file);
    }

    @Override
    void offer(List<Sheet> imported, Shell shell, StudyEditor editor) {
        new TableDialog(shell, editor.session(), imported).open();
    }
}
