package org.amberyard.workbench.sheets;

import java.util.Arrays;
import java.util.Optional;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetMemory;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** What the columns of sheets were said to hold, kept from one run of the program to the next. */
final class SheetMemories {
    private static final String NODE = "org.amberyard.workbench/tables";

    private SheetMemories() {
    }

    private static Preferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** Keeps what the columns of a sheet hold. */
    static void keep(SheetImport made) {
        SheetMemory memory = SheetMemory.of(made);
        node().put(Integer.toHexString(memory.uses().keySet().hashCode()), memory.text());
        try {
            node().flush();
        } catch (BackingStoreException e) {
            ILog.of(SheetMemories.class).warn("The columns of " + made.sheet().place() + " are not remembered", e);
        }
    }

    /** What was said of a sheet with the same headers; of several that with most of them. */
    static Optional<SheetImport> on(Sheet sheet) {
        try {
            return Arrays.stream(node().keys()).sorted().map(key -> SheetMemory.parse(node().get(key, "")))
                    .flatMap(Optional::stream).sorted((a, b) -> b.uses().size() - a.uses().size()).map(m -> m.on(sheet))
                    .flatMap(Optional::stream).findFirst();
        } catch (BackingStoreException e) {
            return Optional.empty();
        }
    }
}
