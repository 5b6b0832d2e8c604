/** The editor of a study: its pages and what they hold. */
package org.amberyard.workbench.editor;
