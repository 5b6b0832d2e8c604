package org.amberyard.workbench.session;

/**
 * One value that an edit has changed, in words.
 *
 * @param element the element, with its kind
 * @param field the field's label; blank for an element that has come or gone
 * @param before what it was, with its unit; blank for nothing
 * @param after what it has become, with its unit; blank for nothing
 */
public record Change(String element, String field, String before, String after) {
}
