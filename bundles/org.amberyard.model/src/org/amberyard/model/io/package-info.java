/** Reading and writing study files: refused whole or read whole, and never half written. */
package org.amberyard.model.io;
