-- What stands on a label for scanners and people: a number in 32 letters and figures, and the check
-- character of ISO/IEC 7064, MOD 37-2. It belongs to the label and may come before its unit, from
-- another record; a label keeps its code for good.

create table short_code (
  code      varchar(8) primary key,
  label_key varchar(60) not null unique
);

-- 524288 is written G000; what lies below is for the units that were there before
create sequence short_code_seq start with 524288 increment by 1;

insert into short_code (code, label_key)
with sign (digit, letter, worth) as (values
    (0, '0', 0), (1, '1', 1), (2, '2', 2), (3, '3', 3), (4, '4', 4), (5, '5', 5),
    (6, '6', 6), (7, '7', 7), (8, '8', 8), (9, '9', 9), (10, 'A', 10), (11, 'B', 11),
    (12, 'C', 12), (13, 'D', 13), (14, 'E', 14), (15, 'F', 15), (16, 'G', 16), (17, 'H', 17),
    (18, 'J', 19), (19, 'K', 20), (20, 'M', 22), (21, 'N', 23), (22, 'P', 25), (23, 'Q', 26),
    (24, 'R', 27), (25, 'S', 28), (26, 'T', 29), (27, 'V', 31), (28, 'W', 32), (29, 'X', 33),
    (30, 'Y', 34), (31, 'Z', 35)
), stem (letters, wanted) as (
  select a.letter || b.letter || c.letter || d.letter,
         mod(38 - mod(16 * a.worth + 8 * b.worth + 4 * c.worth + 2 * d.worth, 37), 37)
  from sign a cross join sign b cross join sign c cross join sign d
  -- at least 27,000 of the 32,768 stems with one first letter have a check that can be written
  where a.digit between 1 and (select (count(*) + 26999) / 27000 from unit)
), code (text, nth) as (
  select stem.letters || sign.letter, row_number() over (order by stem.letters)
  from stem join sign on sign.worth = stem.wanted
), label (label_key, nth) as (
  select label_key, row_number() over (order by id) from unit
)
select code.text, label.label_key from label join code on code.nth = label.nth;
