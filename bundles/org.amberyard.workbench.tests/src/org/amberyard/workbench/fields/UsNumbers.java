package org.amberyard.workbench.fields;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Lets a test read and write numbers as in the United States, wherever it runs. */
final class UsNumbers implements BeforeEachCallback, AfterEachCallback {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @Override
    public void beforeEach(ExtensionContext context) {
        Locale.setDefault(Locale.Category.FORMAT, Locale.US);
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }
}
