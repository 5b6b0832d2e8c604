package org.amberyard.batch;

import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Entry point for runs without a window. */
public final class HeadlessApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] args = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Path folder = Path.of("").toAbsolutePath();
        return new CommandLine().run(List.of(args), folder, text(System.out), text(System.err));
    }

    /** Consoles of Windows say what they understand; everything else reads UTF-8. */
    private static PrintStream text(PrintStream bytes) {
        Charset charset = Optional.ofNullable(System.getProperty("sun.stdout.encoding")).map(Charset::forName)
                .orElse(StandardCharsets.UTF_8);
        return new PrintStream(bytes, true, charset);
    }

    @Override
    public void stop() {
        // A run ends by itself; there is nothing to interrupt.
    }
}
