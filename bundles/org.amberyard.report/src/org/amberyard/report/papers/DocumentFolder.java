package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.StagedFiles;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;

/** Writes documents into a folder: all of them or none. */
public final class DocumentFolder {
    private DocumentFolder() {
    }

    /**
     * What to write.
     *
     * @param kinds documents
     * @param formats formats of each
     */
    public record Wanted(Set<DocumentKind> kinds, Set<DocumentFormat> formats) {
        public Wanted {
            kinds = Set.copyOf(kinds);
            formats = Set.copyOf(formats);
        }

        private int files() {
            return kinds.size() * formats.size();
        }
    }

    /**
     * Writes documents.
     *
     * @param folder is made when it is not there
     * @param progress hears of it; nothing is changed in the folder when it throws
     * @return the files in the order written
     */
    public static List<Path> write(PaperInput in, Wanted wanted, Path folder, Progress progress) throws IOException {
        Files.createDirectories(folder);
        try (StagedFiles files = new StagedFiles(folder)) {
            int done = 0;
            for (DocumentKind kind : DocumentKind.values()) {
                if (wanted.kinds().contains(kind)) {
                    Document document = kind.of(in, progress.part(done, wanted.files()));
                    for (DocumentFormat format : DocumentFormat.values()) {
                        if (wanted.formats().contains(format)) {
                            Files.write(files.add(document.name() + "." + format.ending()), format.write(document));
                            progress.at((double) ++done / wanted.files());
                        }
                    }
                }
            }
            return files.moveIntoPlace();
        }
    }
}
