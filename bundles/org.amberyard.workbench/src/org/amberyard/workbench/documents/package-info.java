/** Documents in the window: which, of which plan, in which formats; written beside the window. */
package org.amberyard.workbench.documents;
