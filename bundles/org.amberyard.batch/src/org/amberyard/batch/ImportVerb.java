package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.StudyFolderImport;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.study.StudyFindings;

/** Makes a study file from a folder of CSV files, all or nothing; a study that is there already is kept beside it. */
final class ImportVerb implements Verb {

    @Override
    public String name() {
        return "import";
    }

    @Override
    public String usage() {
        return "import FOLDER STUDY";
    }

    @Override
    public String summary() {
        return "makes the study file STUDY from the CSV files in FOLDER";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.FolderAndStudy paths = arguments.folderAndStudy(console.folder());
        if (!Files.isDirectory(paths.folder())) {
            throw new WrongUse("FOLDER is " + paths.folder() + ", where there is no folder; give one with CSV files.");
        }
        Study study = read(paths.folder());
        List<Finding> findings = StudyFindings.of(study);
        FindingsText.print(findings, console.err());
        StudyArgument.save(study, paths.study());
        console.out().println("“" + study.getName() + "” is in " + paths.study());
        return StudyFindings.canEvaluate(findings) ? ExitCode.DONE : ExitCode.WRONG_USE;
    }

    private static Study read(Path folder) throws WrongUse {
        try {
            return StudyFolderImport.read(folder);
        } catch (ImportException e) {
            throw new WrongUse("Nothing was imported from " + folder + ":" + System.lineSeparator() + e.getMessage());
        }
    }
}
