/**
 * The application as people meet it: served on a port and used in a real browser, on a phone and at
 * the desk.
 */
package trialwood.walk;
