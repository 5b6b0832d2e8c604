/** What menus and keys do. */
package org.amberyard.workbench.handlers;
