/**
 * What pages are made of: the frame they share, values as people read and type them, lists that
 * page and sort, the few pictures. Nothing here is null unless it says so. Features may use it; it
 * uses no feature.
 */
@org.jspecify.annotations.NullMarked
package trialwood.web;
