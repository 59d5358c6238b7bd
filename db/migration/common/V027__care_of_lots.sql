-- What the pots were filled with, what was done to a lot between potting and shift, how good its plants are, and how cold their roots may get.

alter table crop add column root_kill_celsius numeric(4, 1);
alter table crop_aud add column root_kill_celsius numeric(4, 1);

alter table lot add column medium varchar(80);
alter table lot add column feed_grams numeric(6, 2) check (feed_grams >= 0);
alter table lot add column asked varchar(2000);
alter table lot add column checked varchar(300);

create table lot_care (
  id               uuid primary key,
  lot_id           uuid not null references lot,
  on_date          date not null,
  kind             varchar(10) not null check (kind in ('PINCHED', 'PRUNED', 'COVERED', 'UNCOVERED')),
  cut_to_cm        numeric(5, 1) check (cut_to_cm > 0),
  house            varchar(80),
  lowest_celsius   numeric(4, 1),
  dieback_percent  integer check (dieback_percent between 0 and 100),
  asked            varchar(2000),
  checked          varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references lot_care,
  supersede_reason varchar(300)
);

create index lot_care_lot on lot_care (lot_id, on_date);

create table lot_grade (
  id               uuid primary key,
  lot_id           uuid not null references lot,
  on_date          date not null,
  grade_a          integer check (grade_a >= 0),
  grade_b          integer check (grade_b >= 0),
  grade_c          integer check (grade_c >= 0),
  root_ball        integer check (root_ball between 0 and 5),
  asked            varchar(2000),
  checked          varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references lot_grade,
  supersede_reason varchar(300),
  check ((grade_a is null) = (grade_b is null) and (grade_a is null) = (grade_c is null)),
  check (grade_a is not null or root_ball is not null)
);

create index lot_grade_lot on lot_grade (lot_id, on_date);
