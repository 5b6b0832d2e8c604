package org.amberyard.workbench.find;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Find_commands;
    public static String Find_elements;
    public static String Find_fields;
    public static String Find_hint;
    public static String Find_named;
    public static String Find_notes;
    public static String Find_pages;
    public static String Find_tables;
    public static String Find_views;
    public static String Find_within;

    static {
        NLS.initializeMessages("org.amberyard.workbench.find.messages", Messages.class);
    }

    private Messages() {
    }
}
