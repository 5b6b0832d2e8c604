package org.amberyard.workbench.handlers;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.ui.IWorkbenchPage;

/** The study that a window begins with: one that was never saved, the one asked for, the last one, or the example. */
public final class FirstStudy {

    private static final String EXAMPLE = "examples/ostrick-vale/ostrick-vale." + StudyFile.EXTENSION;

    private FirstStudy() {
    }

    /** Opens it. */
    public static void open(IWorkbenchPage page) {
        StudyOpener opener = new StudyOpener(page);
        boolean unsaved = opener.openUnsaved();
        Optional<Path> named = asked().or(FirstStudy::last);
        if (named.isPresent()) {
            opener.open(named.get());
        } else if (!unsaved) {
            example().ifPresent(opener::openAsNew);
        }
    }

    private static Optional<Path> asked() {
        return Stream.of(Platform.getApplicationArgs()).filter(a -> a.endsWith("." + StudyFile.EXTENSION)).findFirst()
                .map(Path::of);
    }

    private static Optional<Path> last() {
        return RecentStudies.list().stream().findFirst();
    }

    /** The example district of this installation. */
    static Optional<Path> example() {
        Location installation = Platform.getInstallLocation();
        if (installation == null || installation.getURL() == null) {
            return Optional.empty();
        }
        try {
            // The platform's URLs leave blanks as they are.
            URI folder = new URI(installation.getURL().toString().replace(" ", "%20"));
            Path file = Path.of(folder).resolve(EXAMPLE);
            return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
        } catch (URISyntaxException | IllegalArgumentException e) {
            ILog.of(FirstStudy.class).warn(e.getMessage(), e);
            return Optional.empty();
        }
    }
}
